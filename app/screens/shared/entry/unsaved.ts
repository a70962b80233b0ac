import { formatLength, type Hand, type MeasureId, type Say, withUnit } from '../../../body';
import type { Making } from '../making/making';
import { saveFile } from '../save-file';

/** Hands the maker a plain text of what could not be kept, with every reading that is on the screen's mind. */
export function saveUnsaved(
  making: Making,
  measure: MeasureId,
  typed: string,
  { say, hand }: { say: Say; hand: Hand },
): void {
  const taken = Object.entries(making.readings).map(([id, readings]) =>
    say('screen.unsaved.line', {
      measure: say(`measure.${id}.name`),
      lengths: readings.map(({ mm }) => formatLength(mm, hand)),
    }),
  );
  const lines = [
    making.toy.name,
    say('screen.unsaved.line', { measure: say(`measure.${measure}.name`), lengths: [withUnit(typed, hand)] }),
    '',
    ...taken,
  ];
  saveFile(new Blob([lines.join('\n')], { type: 'text/plain' }), 'hemling.txt');
}
