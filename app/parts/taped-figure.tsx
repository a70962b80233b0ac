import type { Diagram } from '../measuring';
import { Picture, Shapes, Strips } from './figure';

/** A whole toy with a tape on it, without start and end: for comparing, not for measuring by. The words beside it say it all. */
export function TapedFigure({ diagram: { figure, tape } }: { readonly diagram: Diagram }) {
  return (
    <Picture frame={figure.frame} text={undefined}>
      <Shapes figure={figure} layers={['toy']} />
      <Strips tape={tape} />
      <Shapes figure={figure} layers={['over']} />
    </Picture>
  );
}
