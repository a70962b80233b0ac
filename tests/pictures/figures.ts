/**
 * Contact sheets of every measuring step of every kind, and of the small pictures, to be looked at:
 * `node --import tsx tests/pictures/figures.ts FOLDER [NAME]`, where NAME is how the sheets wanted begin. Needs Chromium.
 */
import { register } from 'node:module';
import {
  type BodyKind,
  bodyKinds,
  type Knowns,
  measures,
  type TraitId,
  type Traits,
  traitValues,
  usualTraits,
} from '../../app/body';
import {
  compared,
  diagram,
  figure,
  markPicture,
  marksOf,
  portrait,
  SMALL,
  SNUG,
  traitPicture,
  WIDE,
} from '../../app/measuring/figure';
import { type Cell, contactSheet, type SheetLook } from './contact';

const IGNORE_CSS =
  'export const load = (url, at, next) => url.endsWith(".css") ? { format: "module", source: "", shortCircuit: true } : next(url, at)';
register(`data:text/javascript,${encodeURIComponent(IGNORE_CSS)}`);
const { DiagramPicture, FigurePicture } = await import('../../app/parts/figure');
const { TapedFigure } = await import('../../app/parts/taped-figure');

const [folder = 'pictures', wanted = ''] = process.argv.slice(2);
const words: Record<string, string> = {
  'figure.start': 'start',
  'figure.end': 'end',
  'figure.meet': 'start and end',
  'figure.side-line': 'side line',
};
const say = (code: string) => words[code] ?? code;

const looks: Record<string, Partial<Traits>> = {
  plain: {},
  bear: { ears: 'side', neck: 'none' },
  rabbit: { ears: 'top', posture: 'stands', tail: true, arms: 'out', shoulders: 'square' },
  calf: { ears: 'side', posture: 'stands', tail: true, arms: 'up', shoulders: 'none', neck: 'none', legs: 'sewn' },
};

const PAIR = { width: 170, height: 180 };

for (const kind of bodyKinds) {
  for (const [look, given] of Object.entries(looks)) {
    const theme = look === 'rabbit' ? 'dark' : 'light';
    const traits = { ...usualTraits, ...given };
    pages(`${kind}-${look}-wide`, () => steps(kind, traits, WIDE), { ...WIDE, across: 3, theme }, 12);
    pages(`${kind}-${look}-snug`, () => steps(kind, traits, SNUG), { ...SNUG, across: 4, theme }, 12);
  }
}
pages('small', smallPictures, { ...SMALL, across: 8, theme: 'light' }, 64);
pages('wrong', wrongNumbers, { ...PAIR, across: 8, theme: 'light' }, 32);
pages('sides', sides, { ...WIDE, across: 3, theme: 'light' }, 18);
pages('marks', stepZero, { ...WIDE, across: 3, theme: 'light' }, 12);

function steps(kind: BodyKind, traits: Traits, frame: typeof WIDE, knowns: Knowns = {}): Cell[] {
  return measures
    .filter((measure) => measure.typical[kind])
    .flatMap(({ id }) => {
      const found = diagram(kind, traits, knowns, id, frame);
      return found
        ? [{ picture: DiagramPicture({ diagram: found, say }), title: `${id} (${found.tape.view})` }]
        : [
            {
              picture: FigurePicture({ figure: figure(kind, traits, knowns, 'front', frame) }),
              title: `${id}: NO TAPE`,
            },
          ];
    });
}

function smallPictures(): Cell[] {
  const traits = (Object.keys(traitValues) as TraitId[]).flatMap((trait) =>
    bodyKinds.flatMap((kind) =>
      traitValues[trait].map((value) => ({
        picture: FigurePicture({ figure: traitPicture(kind, trait, value) }),
        title: `${trait}: ${value}`,
      })),
    ),
  );
  const portraits = bodyKinds.flatMap((kind) =>
    Object.values(looks).map((look) => ({
      picture: FigurePicture({ figure: portrait(kind, { ...usualTraits, ...look }, {}) }),
      title: kind,
    })),
  );
  return [...portraits, ...traits];
}

/** Each reading typed 2.54 times too large, beside the right one, on otherwise typical toys: the pairs of a doubt. */
function wrongNumbers(): Cell[] {
  return bodyKinds.flatMap((kind) => {
    const traits: Traits = { ...usualTraits, ears: 'side' };
    const right = Object.fromEntries(
      measures.flatMap(({ id, typical }) =>
        typical[kind] ? [[id, { value: typical[kind], from: 'tape', give: 2 }]] : [],
      ),
    ) as Knowns;
    return measures.flatMap(({ id }, at): Cell[] => {
      const factor = at % 2 === 0 ? 2.54 : 0.39;
      const wrong: Knowns = { ...right, [id]: { value: (right[id]?.value ?? 1) * factor, from: 'tape', give: 2 } };
      return compared(kind, traits, id, [wrong, right], PAIR).map((drawn, side) => ({
        picture: TapedFigure({ diagram: drawn }),
        title: side === 0 ? `${id} × ${factor}` : '',
      }));
    });
  });
}

function sides(): Cell[] {
  return bodyKinds.flatMap((kind) =>
    (['front', 'side', 'back'] as const).flatMap((view) =>
      [looks.bear, looks.rabbit].map((look) => ({
        picture: FigurePicture({ figure: figure(kind, { ...usualTraits, ...look, tail: true }, {}, view) }),
        title: `${kind} ${view}`,
      })),
    ),
  );
}

function stepZero(): Cell[] {
  const traits: Traits = { ...usualTraits, ears: 'side' };
  return bodyKinds.flatMap((kind) => [
    ...marksOf[kind].map((mark) => ({
      picture: FigurePicture({ figure: markPicture(kind, traits, {}, [mark]) }),
      title: mark,
    })),
    { picture: FigurePicture({ figure: markPicture(kind, traits, {}, marksOf[kind]) }), title: `${kind}, all` },
  ]);
}

function pages(name: string, draw: () => Cell[], look: SheetLook, most: number) {
  if (!name.startsWith(wanted)) return;
  const cells = draw();
  for (let page = 0; page * most < cells.length; page++) {
    contactSheet(folder, `${name}-${page + 1}`, cells.slice(page * most, (page + 1) * most), look);
  }
}
