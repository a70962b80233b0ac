import { useEffect, useState } from 'preact/hooks';
import { garmentsOf } from '../../storage';
import { useGarments } from '../shared/making/garments-known';
import { lackingOf } from '../shared/making/lacking';
import { type Making, makingOf } from '../shared/making/making';
import { noteHappening } from '../shared/trouble/happened';

/** Other garments of this toy that can be drawn, to be cut from the same cloth. */
export function useAlso({ toy, garment, readings, taught, way }: Making): readonly Making[] {
  const rows = useGarments();
  const [also, setAlso] = useState<readonly Making[]>([]);
  useEffect(() => {
    if (!rows) return;
    let stale = false;
    garmentsOf(toy.id).then((all) => {
      const others = all.flatMap((each): Making[] => {
        const row = rows.find(({ id }) => id === each.order.garment);
        return row && each.id !== garment.id ? [makingOf({ toy, garment: each, row, readings, taught, way })] : [];
      });
      if (!stale) setAlso(others.filter((making) => !lackingOf(making)));
    }, noteHappening);
    return () => {
      stale = true;
    };
  }, [rows, toy.id, JSON.stringify(readings), taught, garment.id]);
  return also;
}
