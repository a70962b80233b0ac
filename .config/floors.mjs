// The floors inside a room: which of its folders lies above which, as data, and the reading of the code against it.

/**
 * The floors of the drafting room, from the ground up: a module may import its own folder and those on lower floors, never
 * one above it nor a neighbour on the same floor. What is not named here (the door, the order) lies on top of them all.
 */
export const FLOORS = {
  'app/drafting': [
    ['geometry', 'engine', 'faces'],
    ['draft-types', 'curves', 'packing', 'heads'],
    ['sizes', 'blocks', 'outfit'],
    ['rows'],
    ['garments/parts', 'drawing'],
    ['garments', 'settling', 'seams', 'sewing', 'pieces'],
    ['sheets', 'cloth'],
    ['notions', 'pencil'],
    ['told'],
    ['guide'],
    ['output'],
  ],
};

const inside = (/** @type {string} */ path, /** @type {string} */ place) =>
  path === place || path.startsWith(`${place}/`) || path.replace(/\.tsx?$/, '') === place;

/** Imports that go up, or across, the floors of a room. @param {import('./imports.mjs').Module} module */
export function climbs({ path, imports }) {
  const [room, floors] = Object.entries(FLOORS).find(([name]) => inside(path, name)) ?? [];
  if (!room || !floors) return [];
  const here = floorOf(room, floors, path);
  return imports.flatMap(({ target }) => {
    if (!inside(target, room)) return [];
    const there = floorOf(room, floors, target);
    return here.folder === there.folder || there.floor < here.floor
      ? []
      : [`${path}: ${here.folder} lies below or beside ${target}`];
  });
}

/** The folder a module lies in, and its floor; the top one where the table does not name it. @param {string} room @param {string[][]} floors @param {string} path */
function floorOf(room, floors, path) {
  const folders = floors.flatMap((names, floor) => names.map((name) => ({ folder: `${room}/${name}`, floor })));
  const holding = folders.filter(({ folder }) => inside(path, folder));
  return holding.sort((a, b) => b.folder.length - a.folder.length)[0] ?? { folder: room, floor: floors.length };
}
