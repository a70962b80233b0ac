import { findMeasure, type MeasureId } from '../../body';
import { Icon, useWords } from '../../parts';
import type { Making } from '../shared/making/making';
import { to, useRoute } from '../shared/route';
import './photo-link.css';

/** The way from a step to the same measure in a photo, where it is a straight one. */
export function PhotoLink({ making, measure }: { readonly making: Making; readonly measure: MeasureId }) {
  const { say } = useWords();
  const then = useRoute().query.get('then');
  if (findMeasure(measure)?.nature !== 'straight') return null;
  const address = to('toy', making.toy.id, making.garment.id, 'measure', measure, 'photo');
  return (
    <a class="quiet photo-link" href={then ? `${address}?then=${then}` : address}>
      <Icon name="photo" />
      {say('photo.link')}
    </a>
  );
}
