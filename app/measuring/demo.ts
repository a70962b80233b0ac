import barley from '../../assets/demo/barley.json';
import bramble from '../../assets/demo/bramble.json';
import dumpling from '../../assets/demo/dumpling.json';
import fennel from '../../assets/demo/fennel.json';
import goliard from '../../assets/demo/goliard.json';
import linnet from '../../assets/demo/linnet.json';
import moth from '../../assets/demo/moth.json';
import pebble from '../../assets/demo/pebble.json';
import pip from '../../assets/demo/pip.json';
import plum from '../../assets/demo/plum.json';
import sorrel from '../../assets/demo/sorrel.json';
import tuck from '../../assets/demo/tuck.json';
import type { Card } from '../body';

/**
 * Invented toys, each a card as a friend would send it; they drive the demo, the tests, the benchmarks and the
 * pictures. TypeScript reads the words in a JSON file as plain strings, hence the assertion: a test checks that every
 * card is whole and that every file in the folder stands in this list.
 */
export const demoCards = [
  bramble,
  sorrel,
  dumpling,
  pip,
  tuck,
  linnet,
  goliard,
  moth,
  barley,
  fennel,
  plum,
  pebble,
] as readonly Card[];
