import { one } from './choice';
import {
  armholeChoice,
  buttonsChoice,
  chinChoice,
  dresserChoice,
  type Ears,
  earsChoice,
  frontClosedByChoice,
  hoodEdgeChoice,
  mayEndSooner,
  pocketChoice,
  ribbedHemChoice,
  shorterChoice,
  wristChoice,
} from './choices';
import { dressedAuto, dressedSuits } from './dressed';
import { head, needs, quietly } from './head';
import { earNeeds, hoodNeeds, sleeveNeeds, sleeveQuiet, topNeeds } from './needed';

type Collared = { readonly collar: 'hood' | 'band' | 'flat' };
const isHooded = ({ collar }: Collared) => collar === 'hood';

/** A top that opens down the front, with a lap or a zip, under a hood or a collar. */
export const jacketHead = head({
  id: 'jacket',
  bodies: ['upright'],
  level: 'patience',
  looks: ['shoulders', 'arms', 'posture', 'stuffing', 'head', 'ears'],
  opensAt: 'front',
  choices: {
    collar: one(['hood', 'band', 'flat'], 'hood'),
    opening: one(['front'], 'front'),
    dresser: dresserChoice,
    closedBy: frontClosedByChoice,
    buttons: buttonsChoice,
    sleeve: one(['long', 'short'], 'long'),
    armhole: armholeChoice,
    wrist: wristChoice,
    hood: one(['auto', 'two', 'three'], 'auto'),
    chin: chinChoice,
    hoodEdge: hoodEdgeChoice,
    ears: earsChoice,
    pocket: pocketChoice,
    pocketCut: one(['patch', 'wide'], 'patch'),
    hem: ribbedHemChoice,
    shorterSleeve: shorterChoice,
  },
  auto: { ...dressedAuto, armhole: 'set-in', wrist: 'turned', hood: 'two' },
  suits: {
    ...dressedSuits(() => true),
    hood: isHooded,
    chin: isHooded,
    hoodEdge: isHooded,
    ears: isHooded,
    pocketCut: ({ pocket }) => pocket,
    shorterSleeve: mayEndSooner.sleeve,
  },
  needs: [
    ...topNeeds,
    ...needs(sleeveNeeds),
    ...quietly(sleeveQuiet),
    ...needs(hoodNeeds, isHooded),
    { measure: 'paw-girth', when: ({ pocket }) => pocket },
    ...needs(earNeeds, (choices: Collared & Ears) => isHooded(choices) && choices.ears === 'open'),
  ],
});
