import { useEffect } from 'preact/hooks';
import { type Place, setPlace } from '../../storage';
import { to } from './route';
import { noteHappening } from './trouble/happened';

/** Screens a maker may go on from another day; each has words under `screen.place`. */
export const places = [
  'choices',
  'marks',
  'wishes',
  'typed',
  'review',
  'pattern',
  'cloth',
  'print',
  'pencil',
  'sew',
  'tried',
  'outfit',
] as const;
type Where = (typeof places)[number] | `measure/${string}` | `sew/${string}`;

/** The address of the screen a maker was on; a step is the tail of its address. */
export function placeAddress({ toyId, garmentId, step }: Pick<Place, 'toyId' | 'garmentId' | 'step'>): string {
  return garmentId ? to('toy', toyId, garmentId, ...step.split('/')) : to('toy', toyId);
}

/** Remembers that the maker is here, so that she can go on from here another day. */
export function usePlace(toyId: string, garmentId: string, step: Where): void {
  useEffect(() => {
    setPlace(toyId, garmentId, step).catch(noteHappening);
  }, [toyId, garmentId, step]);
}
