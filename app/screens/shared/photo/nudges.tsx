import { useWords } from '../../../parts';
import type { Spot } from './marks';

const DIRECTIONS = [
  { name: 'left', by: { x: -1, y: 0 }, drawing: 'M19 12H5m6-6-6 6 6 6' },
  { name: 'up', by: { x: 0, y: -1 }, drawing: 'M12 19V5M6 11l6-6 6 6' },
  { name: 'down', by: { x: 0, y: 1 }, drawing: 'M12 5v14m6-6-6 6-6-6' },
  { name: 'right', by: { x: 1, y: 0 }, drawing: 'M5 12h14m-6-6 6 6-6 6' },
] as const;

type NudgesProps = { readonly name: string; readonly onNudge: (by: Spot) => void };

/** Moves the mark in hand by one pixel of the picture: the way without dragging. */
export function Nudges({ name, onNudge }: NudgesProps) {
  const { say } = useWords();
  return (
    <fieldset class="nudges" dir="ltr">
      <legend class="unseen">{say('photo.nudge', { name })}</legend>
      {DIRECTIONS.map((direction) => (
        <button
          type="button"
          key={direction.name}
          class="quiet round"
          aria-label={say(`photo.${direction.name}`)}
          onClick={() => onNudge(direction.by)}
        >
          <svg class="icon" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
            <path d={direction.drawing} />
          </svg>
        </button>
      ))}
    </fieldset>
  );
}
