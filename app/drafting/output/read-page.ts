// A page to read, on a screen, in large letters or aloud: one file of HTML that asks nothing of a network.

import type { Say, Unit } from '../../body';
import type { Direction } from '../faces';
import type { Ink } from './ink';
import { element, escaped } from './markup';
import { svgOf } from './svg';

export type ReadOptions = {
  readonly say: Say;
  readonly units: Unit;
  /** BCP 47 tag, and which way its lines run. */
  readonly language: string;
  readonly direction: Direction;
};

/** Nothing is loaded and nothing runs, whatever stands in a name. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'";
const STYLE = [
  ':root{color-scheme:light dark}',
  'body{font:1.125rem/1.5 system-ui,sans-serif;max-width:46rem;margin:0 auto;padding:1rem}',
  'svg{max-width:100%;height:auto;background:#fff;direction:ltr}',
  'table{border-collapse:collapse}th,td{border:1px solid;padding:.2em .6em;text-align:start}',
  'figure{margin:1em 0}',
].join('');

/** The whole page: its title, and parts that are markup already. */
export function readPage(
  title: string,
  { language, direction }: Pick<ReadOptions, 'language' | 'direction'>,
  parts: readonly string[],
): string {
  const head = element(
    'head',
    {},
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${escaped(POLICY)}">`,
    '<meta name="viewport" content="width=device-width,initial-scale=1">',
    element('title', {}, escaped(title)),
    element('style', {}, STYLE),
  );
  const main = element('main', {}, element('h1', {}, escaped(title)), ...parts);
  return `<!doctype html>\n${element('html', { lang: language, dir: direction }, head, element('body', {}, main))}\n`;
}

/** A picture by what it is of: all it shows stands in the words round it. */
export function picture(
  ink: readonly Ink[],
  { width, height }: { readonly width: number; readonly height: number },
  what: string,
  { direction }: Pick<ReadOptions, 'direction'>,
): string {
  const size = { width: `${width}mm`, height: `${height}mm`, viewBox: `0 0 ${width} ${height}` };
  const drawn = ink.map((each) => svgOf(each, direction));
  const image = { xmlns: 'http://www.w3.org/2000/svg', role: 'img', 'aria-label': what, ...size };
  return element(
    'figure',
    {},
    element('svg', image, element('g', { fill: 'none', stroke: '#000', 'stroke-linejoin': 'round' }, ...drawn)),
  );
}

/** A part with its heading; nothing where there is nothing to say. */
export function section(level: number, title: string, content: readonly string[]): string {
  if (content.every((each) => each === '')) return '';
  return element('section', {}, element(`h${level}`, {}, escaped(title)), ...content);
}

export const paragraph = (text: string): string => element('p', {}, escaped(text));

export const list = (rows: readonly string[]): string =>
  rows.length > 0 ? element('ul', {}, ...rows.map((row) => element('li', {}, escaped(row)))) : '';
