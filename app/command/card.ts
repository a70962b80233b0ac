/**
 * A card between its file and its link: `card card.json` prints the link, `card LINK` prints the card as JSON.
 * What a link cannot hold, or a reader does not know, is named on stderr. Exit 0; 2 with one line on stderr where the
 * file cannot be read or the card or link is wrong: what was given, the fault's code, the place in it, its values.
 */
import { existsSync, readFileSync } from 'node:fs';
import {
  type CardResult,
  cardLink,
  carriesCard,
  decodeCode,
  LARGEST_CARD_BYTES,
  readCard,
  writeCard,
} from '../sharing';
import { EXIT, type Exit } from './call';
import { command } from './command';
import { readFile } from './read-file';
import { complain, print, printJson } from './terminal';

await command(
  {
    name: 'card',
    usage: ['CARD.json', '- < CARD.json', 'LINK'],
    options: {},
    words: [1, 1],
    exits: [EXIT.done, EXIT.unreadable, EXIT.ours],
  },
  ({ words: [given = ''] }) =>
    /^https?:/u.test(given) || (carriesCard(given) && !existsSync(given)) ? printCard(given) : printLink(given),
);

function printLink(path: string): Exit {
  const read = readCardFile(path);
  if (!read.ok) return refuse(lineOf(path, read));
  const { link, leftOut } = cardLink(read.card, homepage());
  tell('skipped', read.skipped);
  tell('left-out', leftOut);
  print(link);
  return EXIT.done;
}

function printCard(link: string): Exit {
  const read = decodeCode(link);
  if (!read.ok) return refuse(lineOf('link', read));
  tell('skipped', read.skipped);
  printJson(writeCard(read.card));
  return EXIT.done;
}

function readCardFile(path: string): CardResult {
  const file = readFile(path, LARGEST_CARD_BYTES);
  if (file.ok) return readCard(file.text);
  const values = file.code === 'too-large' ? { limit: LARGEST_CARD_BYTES } : {};
  return { ok: false, fault: { code: file.code, where: '', values } };
}

/** Where the app is at home: the address of every link. */
function homepage(): string {
  return JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')).homepage;
}

function lineOf(given: string, { fault }: Extract<CardResult, { ok: false }>): string {
  const values = Object.entries(fault.values ?? {}).map(([name, value]) => `${name}=${value}`);
  return [`${given}:`, fault.code, fault.where, ...values].filter((part) => part !== '').join(' ');
}

function tell(what: string, names: readonly string[]): void {
  for (const name of names) complain(`${what} ${name}`);
}

function refuse(line: string): Exit {
  complain(line);
  return EXIT.unreadable;
}
