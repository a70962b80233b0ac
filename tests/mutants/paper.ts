import { breaksIn } from './break';

/** Sheets, tiles, labels, files. */
export const paperBreaks = breaksIn('app/drafting', [
  {
    what: 'tiles that overlap too little to join',
    from: 'OVERLAP_MM = 10',
    to: 'OVERLAP_MM = 2',
    tests: 'unit/sheets-tiles',
  },
  {
    what: 'pieces said to share no page that do',
    from: 'Math.abs(nx) * wide + Math.abs(ny) * high >= (sums[plane + 2] as number)) break;',
    to: '0 >= (sums[plane + 2] as number)) break;',
    tests: 'unit/packing-together',
  },
  {
    what: 'a tile too few',
    from: 'Math.ceil((length - OVERLAP_MM) / (window - OVERLAP_MM))',
    to: 'Math.floor((length - OVERLAP_MM) / (window - OVERLAP_MM))',
    tests: 'unit/sheets-tiles',
  },
  {
    what: 'pages left out where a piece just enters them',
    from: 'const last = share(to + left, window.width, columns);',
    to: 'const last = share(to + left - 30, window.width, columns);',
    tests: 'unit/sheets-tiles',
  },
  {
    what: 'tiles shown a step aside',
    from: 'window.y + top - row * stepY',
    to: 'window.y + top - row * stepY + 8',
    tests: 'unit/sheets-tiles',
  },
  {
    what: 'crosses where no page meets',
    from: 'nameAt(row + dy, column + dx)].some(Boolean)',
    to: 'nameAt(row + dy, column + dx), true].some(Boolean)',
    tests: 'unit/sheets-tiles',
  },
  {
    what: 'pieces split that fit aslant',
    from: 'turn < Math.PI; turn += SLANT_STEP',
    to: 'turn < 0; turn += SLANT_STEP',
    tests: 'unit/sheets',
  },
  {
    what: 'a board that forgets what lies on it',
    from: 'const board = more.reduce((left, { turned, x, y }) => blockRows(left, turned.rows, x, y), sheet.board);',
    to: 'const board = sheet.board;',
    tests: 'unit/sheets',
  },
  {
    what: 'more effort that makes it worse',
    from: '!dearer(cost, best.cost)',
    to: 'dearer(cost, best.cost)',
    tests: 'unit/sheets',
  },
  {
    what: 'furniture over the lines of the piece it lies within',
    from: 'return blockOutside(withMarks(bareBoard(area), piece, whole, to), outline, CLEAR_MM);',
    to: 'return bareBoard(area);',
    tests: 'unit/sheets',
  },
  {
    what: 'labels beside their piece',
    from: 'blockOutside(lines, outline, CLEAR_MM)',
    to: 'lines',
    tests: 'unit/output',
  },
  {
    what: 'labels over the piece’s own lines',
    from: 'export const CLEAR_MM = 1.5',
    to: 'export const CLEAR_MM = -6',
    tests: 'unit/output',
  },
]);
