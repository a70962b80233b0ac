import { describe, expect, it } from 'vitest';
import { usualTraits } from '../../app/body';
import { diagram, figure } from '../../app/measuring/figure';
import { DiagramPicture, FigurePicture } from '../../app/parts/figure';

type Element = { readonly type: string; readonly props: Readonly<Record<string, unknown>> };

/** Every element that a part without state draws. */
function elementsOf(node: unknown): Element[] {
  if (Array.isArray(node)) return node.flatMap(elementsOf);
  if (typeof node !== 'object' || node === null) return [];
  const { type, props } = node as { type: unknown; props: Record<string, unknown> };
  if (typeof type === 'function') return elementsOf(type(props));
  return [{ type: String(type), props }, ...elementsOf(props.children)];
}

const say = (code: string, values: Readonly<Record<string, unknown>> = {}) =>
  `<${[code, ...Object.values(values)].join(' ')}>`;
const drawn = diagram('upright', usualTraits, {}, 'front-width');
const elements = drawn ? elementsOf(DiagramPicture({ diagram: drawn, say })) : [];

describe('the picture of a step', () => {
  it('says what it shows', () => {
    expect(elements[0]?.props).toMatchObject({
      role: 'img',
      'aria-label': '<list.after <figure.seen.front> <figure.tape.front-width>>',
    });
  });

  it('draws the tape over the toy, and the marks and words over both', () => {
    const classes = elements.map(({ props }) => String(props.class));
    expect(classes.lastIndexOf('toy-fur')).toBeLessThan(classes.indexOf('laid-strip'));
    expect(classes.indexOf('laid-strip')).toBeLessThan(classes.indexOf('laid-start'));
    expect(elements.filter(({ type }) => type === 'text').map(({ props }) => props.children)).toEqual([
      '<figure.start>',
      '<figure.end>',
    ]);
  });

  it('carries no inline style, which the content policy forbids, and no id, which could clash', () => {
    expect(elements.filter(({ props }) => 'style' in props || 'id' in props)).toEqual([]);
  });

  it('is hidden from readers where it only decorates', () => {
    const [picture] = elementsOf(FigurePicture({ figure: figure('round', usualTraits, {}, 'front') }));
    expect(picture?.props).toMatchObject({ 'aria-hidden': 'true' });
  });
});
