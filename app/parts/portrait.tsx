import type { Body } from '../body';
import { type Figure, type Frame, figure } from '../measuring';
import { FigurePicture } from './figure';
import './portrait.css';

/** Wide enough that the toy fills the height; what is left free at both sides is cut off again. */
const FACE: Frame = { width: 300, height: 200 };

/** A toy as its numbers make it, without threads and tape: it stands for the toy wherever there is no photo. */
export function Portrait({ body }: { readonly body: Body }) {
  return (
    <span class="portrait">
      <FigurePicture figure={bare(figure(body.kind, body.traits, body.sizes, 'front', FACE))} />
    </span>
  );
}

const bare = (drawn: Figure): Figure => ({ ...drawn, shapes: drawn.shapes.filter(({ layer }) => layer === 'toy') });
