import type { MeasureId } from '../../body';
import { isWish } from '../../measuring';
import { useWords } from '../../parts';
import type { Making } from '../shared/making/making';
import { to } from '../shared/route';

type NumbersAgainProps = { readonly measures: readonly MeasureId[]; readonly making: Making };

/** The numbers behind what is told, each a way to take it again; a length that was only suggested is nobody's mistake. */
export function NumbersAgain({ measures, making: { toy, garment, readings } }: NumbersAgainProps) {
  const { say } = useWords();
  const hers = measures.filter((id) => readings[id] || !isWish(id));
  if (hers.length === 0) return null;
  return (
    <div class="told-checks">
      <span class="soft">{say('screen.pattern.check')}</span>
      {hers.map((id) => (
        <a key={id} href={`${to('toy', toy.id, garment.id, 'measure', id)}?then=pattern`}>
          {say(`measure.${id}.name`)}
        </a>
      ))}
    </div>
  );
}
