/**
 * Contact sheets of every measuring step of every kind, to be looked at: `node --import tsx tests/pictures/figures.ts
 * FOLDER [kind]`. Needs Chromium.
 */
import { register } from 'node:module';
import { type BodyKind, type Knowns, type MeasureId, measures, type Traits, usualTraits } from '../../app/body';
import { diagram, TALL, WIDE } from '../../app/measuring/figure';
import { contactSheet } from './contact';

const IGNORE_CSS =
  'export const load = (url, at, next) => url.endsWith(".css") ? { format: "module", source: "", shortCircuit: true } : next(url, at)';
register(`data:text/javascript,${encodeURIComponent(IGNORE_CSS)}`);
const { DiagramPicture } = await import('../../app/parts/figure');

const [folder = 'pictures', only] = process.argv.slice(2);
const words: Record<string, string> = { 'figure.start': 'start', 'figure.end': 'end', 'figure.meet': 'start and end' };
const say = (code: string) => words[code] ?? code;

const looks: Record<string, Partial<Traits>> = {
  plain: {},
  bear: { ears: 'side', neck: 'none' },
  rabbit: { ears: 'top', posture: 'stands', tail: true, arms: 'out', shoulders: 'square' },
};

for (const kind of ['upright', 'four-legged', 'round'] as const) {
  if (only && only !== kind) continue;
  for (const [look, traits] of Object.entries(looks)) sheet(`${kind}-${look}`, kind, { ...usualTraits, ...traits }, {});
}

function sheet(name: string, kind: BodyKind, traits: Traits, knowns: Knowns) {
  const steps = measures.filter((measure) => measure.typical[kind]).map(({ id }) => id as MeasureId);
  for (const [size, frame] of [
    ['wide', WIDE],
    ['tall', TALL],
  ] as const) {
    if (size === 'tall' && !name.endsWith('bear')) continue;
    const cells = steps.flatMap((measure) => {
      const found = diagram(kind, traits, knowns, measure, frame);
      return found
        ? [{ picture: DiagramPicture({ diagram: found, say }), title: `${measure} (${found.tape.view})` }]
        : [];
    });
    const theme = name.endsWith('rabbit') ? 'dark' : 'light';
    contactSheet(folder, `${name}-${size}`, cells, { across: 4, width: frame.width, height: frame.height, theme });
  }
}
