import { neckline } from '../curves/neckline';
import { pathLength } from '../geometry';
import { leastBareShoulder } from './bare';
import { maker } from './maker';

/** Of the shoulder, what a tank leaves free of its straps at the neck, and how much deeper its neck is in front and behind. */
const FREE_SHARE = 0.4;
const DEEPER_FRONT = 1.25;
const DEEPER_BACK = 1.8;
/** Its neck ends above the underarm: at most this share of the way down there, but where the neck as it was lies lower. */
const LOWEST_SHARE = 0.85;

/** A tank cut: the neckline moves out along the shoulder and down, so levels below it are counted from farther down. */
export const tankSizes = maker(
  [
    'slope',
    'shoulder',
    'neckHalfWidth',
    'frontNeckDrop',
    'backNeckDrop',
    'armDrop',
    'armholeDepth',
    'frontLength',
    'backLength',
  ],
  ['neckHalfWidth', 'shoulder', 'armDrop', 'frontLength', 'backLength', 'frontNeckDrop', 'backNeckDrop', 'neck'],
  (wearer, sizes) => {
    const { slope, shoulder, neckHalfWidth, frontNeckDrop, backNeckDrop, armDrop, frontLength, backLength } = sizes;
    const free = Math.max(Math.min(shoulder * FREE_SHARE, shoulder - leastBareShoulder(wearer)), 0);
    const down = free * Math.sin(slope);
    const half = neckHalfWidth + free * Math.cos(slope);
    const deeper = Math.min(frontNeckDrop * DEEPER_FRONT, (armDrop + sizes.armholeDepth) * LOWEST_SHARE);
    const front = Math.min(Math.max(deeper, frontNeckDrop, half) - down, frontLength * 0.6);
    const back = Math.min(backNeckDrop * DEEPER_BACK, front * 0.9, backLength * 0.6);
    const along = (drop: number) => pathLength(neckline(half, drop, slope));
    return {
      sizes: {
        neckHalfWidth: half,
        shoulder: shoulder - free,
        armDrop: armDrop - down,
        frontLength: frontLength - down,
        backLength: backLength - down,
        frontNeckDrop: front,
        backNeckDrop: back,
        neck: 2 * (along(front) + along(back)),
      },
    };
  },
);
