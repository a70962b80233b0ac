import type { Say } from '../body';
import { createSay } from '../words';
import { type Asked, type Call, EXIT, type Exit } from './call';
import { helpOf } from './help';
import { complain, endQuietlyWithTheReader, print } from './terminal';

/** Reads what was asked, helps or refuses in one line where that is called for, and runs the command. */
export async function command(call: Call, run: (asked: Asked, say: Say) => Exit | Promise<Exit>): Promise<void> {
  endQuietlyWithTheReader();
  try {
    process.exitCode = await answer(call, process.argv.slice(2), run);
  } catch (error) {
    complain(`ours ${error instanceof Error ? error.message : String(error)}`);
    process.exitCode = EXIT.ours;
  }
}

async function answer(call: Call, args: readonly string[], run: Parameters<typeof command>[1]): Promise<Exit> {
  const say = await createSay('en');
  if (args.includes('--help')) {
    print(helpOf(call, say));
    return EXIT.done;
  }
  const asked = read(call, args);
  if ('wrong' in asked) {
    complain(`${call.name}: ${say(`command.wrong.${asked.wrong}`, asked)}`);
    return EXIT.unreadable;
  }
  return run(asked, say);
}

type Wrong = { readonly wrong: 'option' | 'value' | 'no-value' | 'words'; readonly option: string };

/** `--option value` or `--option=value`; everything behind `--` is a word, and so is a single `-`. */
function read({ options, words: [fewest, most] }: Call, args: readonly string[]): Asked | Wrong {
  const words: string[] = [];
  const values = new Map<string, string>();
  for (let at = 0; at < args.length; at++) {
    const arg = args[at] ?? '';
    if (arg === '--') {
      words.push(...args.slice(at + 1));
      break;
    }
    if (!/^-./u.test(arg)) {
      words.push(arg);
      continue;
    }
    const [option = '', inline] = arg.split(/=(.*)/su);
    const name = option.slice(2);
    if (!option.startsWith('--') || !Object.hasOwn(options, name)) return { wrong: 'option', option };
    const takes = options[name] !== null;
    if (!takes && inline !== undefined) return { wrong: 'no-value', option };
    const value = inline ?? (takes ? args[++at] : '');
    if (value === undefined || (takes && (value === '' || value.startsWith('--')))) return { wrong: 'value', option };
    values.set(name, value);
  }
  const called = [...values.keys()].some((name) => options[name] === null);
  if (words.length > most || (words.length < fewest && !called)) return { wrong: 'words', option: '' };
  return { words, values: Object.fromEntries(values), on: (option) => values.has(option) };
}
