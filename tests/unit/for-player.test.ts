import { expect, test } from 'vitest';
import { heads } from '../../app/drafting/heads';
import { forPlayer } from '../../app/screens/shared/care/for-player';

const headOf = (id: string) => heads.find((head) => head.id === id) ?? expect.fail(id);

test('clothes of a child under three are made for small hands where that is asked, and not against the maker', () => {
  const tee = headOf('tee');
  expect(forPlayer({ garment: 'tee' }, tee, 'young').choices).toEqual({ dresser: 'small-child' });
  expect(forPlayer({ garment: 'tee' }, tee, 'older')).toEqual({ garment: 'tee' });
  expect(forPlayer({ garment: 'tee' }, tee, undefined)).toEqual({ garment: 'tee' });
  const said = { garment: 'tee', choices: { dresser: 'display', sleeve: 'short' } };
  expect(forPlayer(said, tee, 'young')).toEqual(said);
  expect(forPlayer({ garment: 'scarf' }, headOf('scarf'), 'young')).toEqual({ garment: 'scarf' });
});
