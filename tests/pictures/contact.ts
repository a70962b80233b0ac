import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { VNode } from 'preact';

const app = join(dirname(fileURLToPath(import.meta.url)), '../../app');

/** A cell of a contact sheet: a picture and the words under it. */
export type Cell = { readonly picture: VNode; readonly title: string };

/** Writes `name`.html and, through Chromium, `name`.png into `folder`: cells of the given size, `across` to a row. */
export function contactSheet(folder: string, name: string, cells: readonly Cell[], look: SheetLook) {
  const rows = Math.ceil(cells.length / look.across);
  const [width, height] = [look.across * (look.width + 12) + 12, rows * (look.height + 34) + 12];
  mkdirSync(folder, { recursive: true });
  const page = join(folder, `${name}.html`);
  writeFileSync(page, pageOf(cells, look));
  const shot = `--screenshot=${join(folder, `${name}.png`)}`;
  const quiet = ['--headless', '--no-sandbox', '--disable-gpu', '--no-first-run', '--hide-scrollbars'];
  const scale = `--force-device-scale-factor=${look.scale ?? 1}`;
  execFileSync('chromium', [...quiet, scale, `--window-size=${width},${height}`, shot, `file://${page}`], {
    stdio: 'ignore',
  });
}

export type SheetLook = {
  readonly across: number;
  readonly width: number;
  readonly height: number;
  readonly theme: 'light' | 'dark';
  readonly scale?: number;
};

function pageOf(cells: readonly Cell[], { across, width, height, theme }: SheetLook): string {
  const css = ['tokens.css', 'figure.css'].map((file) => readFileSync(join(app, 'parts', file), 'utf8')).join('');
  const body = cells.map(
    ({ picture, title }) => `<figure><div>${html(picture)}</div><figcaption>${title}</figcaption></figure>`,
  );
  return `<!doctype html><html data-theme="${theme}"><meta charset="utf-8"><style>${css}
    body { margin: 12px; background: var(--paper); color: var(--ink); display: grid; gap: 12px;
      grid-template-columns: repeat(${across}, ${width}px); font: 14px var(--face) }
    figure { margin: 0; height: ${height + 22}px } div { background: var(--sheet); height: ${height}px }
    .laid-run { animation: none }</style>${body.join('')}</html>`;
}

/** Parts without state, as text: enough for pictures. */
function html(node: unknown): string {
  if (Array.isArray(node)) return node.map(html).join('');
  if (typeof node === 'string' || typeof node === 'number') return String(node);
  if (typeof node !== 'object' || node === null) return '';
  const { type, props } = node as { type: unknown; props: Record<string, unknown> };
  if (typeof type === 'function') return html(type(props));
  const attributes = Object.entries(props)
    .filter(([name, value]) => name !== 'children' && value !== undefined && value !== false)
    .map(([name, value]) => ` ${name}="${String(value).replaceAll('"', '&quot;')}"`);
  return `<${type}${attributes.join('')}>${html(props.children)}</${type}>`;
}
