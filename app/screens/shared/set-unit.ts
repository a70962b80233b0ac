import type { Unit } from '../../body';
import { changeToy, setSetting, type Toy } from '../../storage';

/** Another unit for what is typed: the toy's, where it has one of its own, else that of the whole app. */
export const setUnit = async ({ id, unit: own }: Pick<Toy, 'id' | 'unit'>, unit: Unit): Promise<void> => {
  if (own) await changeToy(id, { unit });
  else await setSetting('unit', unit);
};
