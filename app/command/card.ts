/**
 * A card between its file and its link: `card card.json` prints the link, `card LINK` prints the card as JSON.
 * What a link cannot hold, or a reader does not know, is named on stderr. Exit 0; 2 with one line on stderr where the
 * file cannot be read or the card or link is wrong: what was given, the fault's code, the place in it, its values.
 */
import { existsSync, readFileSync, statSync } from 'node:fs';
import {
  type CardResult,
  cardLink,
  carriesCard,
  decodeCode,
  LARGEST_CARD_BYTES,
  readCard,
  writeCard,
} from '../sharing';

const [given, ...others] = process.argv.slice(2);
if (given === undefined || others.length > 0) refuse('usage: card CARD.json | card LINK');
else if (/^https?:/u.test(given) || (carriesCard(given) && !existsSync(given))) printCard(given);
else printLink(given);

function printLink(path: string): void {
  const read = readFile(path);
  if (read.ok) {
    const { link, leftOut } = cardLink(read.card, homepage());
    tell('skipped', read.skipped);
    tell('left-out', leftOut);
    console.log(link);
  } else refuse(lineOf(path, read));
}

function printCard(link: string): void {
  const read = decodeCode(link);
  if (read.ok) {
    tell('skipped', read.skipped);
    console.log(writeCard(read.card));
  } else refuse(lineOf('link', read));
}

function readFile(path: string): CardResult {
  try {
    const { size } = statSync(path);
    if (size > LARGEST_CARD_BYTES) {
      return { ok: false, fault: { code: 'too-large', where: '', values: { bytes: size, limit: LARGEST_CARD_BYTES } } };
    }
    return readCard(readFileSync(path, 'utf8'));
  } catch {
    return { ok: false, fault: { code: 'unreadable-file', where: '' } };
  }
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
  for (const name of names) console.error(`${what} ${name}`);
}

function refuse(line: string): void {
  console.error(line.replace(/\s+/gu, ' '));
  process.exitCode = 2;
}
