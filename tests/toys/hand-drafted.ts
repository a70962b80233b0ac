import { type Card, MM_PER_INCH } from '../../app/body';

const inch = (length: number) => length * MM_PER_INCH;

/** An upright toy about 16 in tall, with the twelve sizes a practised maker drafts by hand from (common practice, no source). */
export const handDrafted: Card = {
  format: 'hemling-card',
  version: 1,
  toy: { name: 'By hand', body: 'upright', traits: { shoulders: 'square', stuffing: 'soft' } },
  unit: 'in',
  taken: '2026-11-20',
  note: '',
  readings: Object.fromEntries(
    Object.entries({
      'body-length': 5.5,
      'body-girth': 17,
      'front-width': 8.5,
      'side-inset': 1.5,
      'shoulder-length': 1,
      'armhole-depth': 2.75,
      'front-neck-drop': 1.5,
      'upper-arm-girth': 8,
      'arm-length': 5.25,
      'underarm-length': 4,
      'face-edge': 15.5,
      'hood-depth': 5,
    }).map(([id, length]) => [id, [inch(length)]]),
  ),
};
