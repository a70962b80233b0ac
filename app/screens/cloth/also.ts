import { useEffect, useState } from 'preact/hooks';
import { garmentsOf } from '../../storage';
import { useGarments } from '../shared/making/garments-known';
import { lackingOf } from '../shared/making/lacking';
import { type Making, makingOf } from '../shared/making/making';
import { idsOf } from '../shared/making/outfit';
import { noteHappening } from '../shared/trouble/happened';

/** Garments of this toy beside those being cut that can be drawn, to be cut from the same cloth. */
export function useAlso(making: Making): readonly Making[] {
  const { toy, readings, taught, way } = making;
  const cut = ofOneCloth(making);
  const rows = useGarments();
  const [also, setAlso] = useState<readonly Making[]>([]);
  useEffect(() => {
    if (!rows) return;
    let stale = false;
    garmentsOf(toy.id).then((all) => {
      const others = all.flatMap((each): Making[] => {
        const row = rows.find(({ id }) => id === each.order.garment);
        return row && !cut.includes(each.id) ? [makingOf({ toy, garment: each, row, readings, taught, way })] : [];
      });
      if (!stale) setAlso(others.filter((making) => !lackingOf(making)));
    }, noteHappening);
    return () => {
      stale = true;
    };
  }, [rows, toy.id, JSON.stringify(readings), taught, cut.join()]);
  return also;
}

/** Of what is made, the garments that share the first one's cloth. */
function ofOneCloth({ garment, also }: Making): readonly string[] {
  const orders = [garment, ...also.map((each) => each.garment)].map(({ order }) => order);
  return idsOf(garment.id, true).filter((_, index) => orders[index]?.cloth === garment.order.cloth);
}
