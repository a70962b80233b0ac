import type { Say } from '../body';
import type { Call } from './call';

/** What `--help` prints: what the command does, how it is called, its options, and what its exit codes mean. */
export function helpOf({ name, usage, options, exits }: Call, say: Say): string {
  const rows = (of: readonly (readonly [string, string])[]) => {
    const wide = Math.max(...of.map(([left]) => left.length));
    return of.map(([left, right]) => `  ${left.padEnd(wide)}  ${right}`);
  };
  return [
    say(`command.${name}.what`),
    '',
    say('command.usage'),
    ...usage.map((line) => `  npm run --silent ${name} -- ${line}`.trimEnd()),
    '',
    say('command.options'),
    ...rows([
      ...Object.entries(options).map(
        ([option, value]) => [`--${option} ${value ?? ''}`.trim(), say(`command.${name}.${option}`)] as const,
      ),
      ['--help', say('command.help')],
    ]),
    '',
    say('command.exits'),
    ...rows(exits.map((exit) => [String(exit), say(`command.exit.${exit}`)] as const)),
  ].join('\n');
}
