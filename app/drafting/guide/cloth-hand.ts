type MachineNeedle = '70/10' | '75/11' | '80/12' | '90/14';

/** How a cloth is sewn: what to set and what to take. All common practice, no source. */
export type ClothHand = {
  /** Size of the machine's needle as its packet says it, the metric one and the older one, and its point. */
  readonly machineNeedle: MachineNeedle;
  readonly point: 'universal' | 'ballpoint';
  /** Stitch length by machine and by hand, mm. */
  readonly stitch: number;
  readonly handStitch: number;
  /** Size of a hand needle (sharps). */
  readonly handNeedle: number;
  /** What stretches is sewn with a narrow zigzag, or a backstitch by hand. */
  readonly gives: boolean;
  /** What an iron may do to it. */
  readonly heat: 'hot' | 'warm' | 'never';
};

const woven: ClothHand = {
  machineNeedle: '80/12',
  point: 'universal',
  stitch: 2,
  handStitch: 2,
  handNeedle: 9,
  gives: false,
  heat: 'hot',
};

const hands: Readonly<Record<string, ClothHand>> = {
  'quilting-cotton': woven,
  linen: woven,
  lawn: { ...woven, machineNeedle: '70/10', stitch: 1.8, handNeedle: 10 },
  satin: { ...woven, machineNeedle: '70/10', handNeedle: 10, heat: 'warm' },
  tulle: { ...woven, machineNeedle: '70/10', handNeedle: 10, heat: 'never' },
  'light-denim': { ...woven, machineNeedle: '90/14', stitch: 2.5, handNeedle: 8 },
  needlecord: { ...woven, machineNeedle: '90/14', stitch: 2.5, handNeedle: 8, heat: 'warm' },
  flannel: { ...woven, stitch: 2.2, handNeedle: 8 },
  jersey: { ...woven, machineNeedle: '75/11', point: 'ballpoint', stitch: 2.5, gives: true, heat: 'warm' },
  'sweatshirt-fleece': {
    ...woven,
    machineNeedle: '90/14',
    point: 'ballpoint',
    stitch: 2.5,
    handStitch: 2.5,
    handNeedle: 7,
    gives: true,
    heat: 'warm',
  },
  'polar-fleece': {
    ...woven,
    machineNeedle: '90/14',
    point: 'ballpoint',
    stitch: 3,
    handStitch: 3,
    handNeedle: 7,
    gives: true,
    heat: 'never',
  },
  felt: { ...woven, stitch: 2.5, handStitch: 3, handNeedle: 7, heat: 'warm' },
  minky: {
    ...woven,
    machineNeedle: '90/14',
    point: 'ballpoint',
    stitch: 3,
    handStitch: 3,
    handNeedle: 7,
    gives: true,
    heat: 'never',
  },
};

/** How the cloth of an order is sewn; as plain woven cloth where the table does not know it. */
export const handOf = (cloth: string): ClothHand => hands[cloth] ?? woven;
