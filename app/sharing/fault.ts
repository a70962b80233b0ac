import type { BaseIssue } from 'valibot';
import { cleanLine } from '../body';

/** What is wrong with a card, and where in it: a stable code for the words in `locales/`, never a sentence. */
export type Fault = {
  readonly code: string;
  /** Place in the card, such as `readings.head-girth[0]`; empty when the whole is meant. */
  readonly where: string;
  readonly values?: Readonly<Record<string, number | string>>;
};

export type Refusal = { readonly ok: false; readonly fault: Fault };

export const faultOf = (code: string, where = '', values?: Fault['values']): Refusal => ({
  ok: false,
  fault: values ? { code, where, values } : { code, where },
});

/** A fault from valibot's first issue, whose message is the code; `at` is where the checked part lies in the card. */
export function faultFromIssue(issue: BaseIssue<unknown>, at: string): Refusal {
  const place = (issue.path ?? []).reduce((path, { key }) => `${path}${step(key, path)}`, at);
  return typeof issue.input === 'number'
    ? faultOf(issue.message, place, { value: issue.input })
    : faultOf(issue.message, place);
}

const step = (key: unknown, path: string) => {
  if (typeof key === 'number') return `[${key}]`;
  const name = cleanLine(String(key).slice(0, PLACE_CHARACTERS));
  return path ? `.${name}` : name;
};

/** A key as long as a page must not become an error message as long as a page. */
const PLACE_CHARACTERS = 60;
