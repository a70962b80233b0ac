import { describe, expect, test } from 'vitest';
import { findPaper, paperIds } from '../../app/drafting/sheets';
import { paper } from './sheets-overlap';

describe('papers', () => {
  test('A sizes halve each other (ISO 216)', () => {
    for (const [small, large] of [['a4', 'a3']] as const) {
      expect(paper(large).width).toBe(paper(small).height);
      expect(Math.floor(paper(large).height / 2)).toBe(paper(small).width);
    }
    expect(paper('a0').width * paper('a0').height).toBeCloseTo(1e6, -3);
  });

  test('inch sizes are exact (ANSI/ASME Y14.1; 1 in = 25.4 mm)', () => {
    expect([paper('letter').width, paper('letter').height].map((mm) => mm / 25.4)).toEqual([8.5, 11]);
    expect([paper('tabloid').width, paper('tabloid').height].map((mm) => mm / 25.4)).toEqual([11, 17]);
  });

  test('“either” is what A4 and Letter share', () => {
    expect(paper('either').width).toBe(Math.min(paper('a4').width, paper('letter').width));
    expect(paper('either').height).toBe(Math.min(paper('a4').height, paper('letter').height));
  });

  test('rolls by width; anything else is unknown', () => {
    expect(paper('roll:914')).toMatchObject({ width: 914, roll: true });
    for (const id of [
      'roll:',
      'roll:20',
      'roll:1e9',
      'roll:-914',
      'roll:914 ',
      'a5',
      'A4',
      '',
      'constructor',
      '__proto__',
    ])
      expect(findPaper(id)).toBeUndefined();
    expect(paperIds).toContain('roll:<mm>');
  });
});
