import { one } from './choice';
import { buttonsChoice, dresserChoice, type Ears, frontClosedByChoice } from './choices';
import { dressedSuits } from './dressed';
import { head } from './head';
import { endChoices, hoodChoices, hoodedAuto, hoodedLooks, hoodedNeeds, hoodedSuits, sleevedChoices } from './hooded';

type Collared = Ears & { readonly collar: 'hood' | 'band' | 'flat'; readonly pocket: boolean };
const isHooded = ({ collar }: Pick<Collared, 'collar'>) => collar === 'hood';

/** A top that opens down the front, with a lap or a zip, under a hood or a collar. */
export const jacketHead = head({
  id: 'jacket',
  bodies: ['upright'],
  level: 'patience',
  looks: hoodedLooks,
  opensAt: 'front',
  choices: {
    collar: one(['hood', 'band', 'flat'], 'hood'),
    opening: one(['front'], 'front'),
    dresser: dresserChoice,
    closedBy: frontClosedByChoice,
    buttons: buttonsChoice,
    sleeve: one(['long', 'short'], 'long'),
    ...sleevedChoices,
    ...hoodChoices,
    pocketCut: one(['patch', 'wide'], 'patch'),
    ...endChoices,
  },
  auto: hoodedAuto,
  suits: {
    ...dressedSuits(() => true),
    ...hoodedSuits,
    hood: isHooded,
    chin: isHooded,
    hoodEdge: isHooded,
    ears: isHooded,
  },
  needs: hoodedNeeds<Collared>(() => true, isHooded),
});
