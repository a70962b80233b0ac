import type { Traits } from '../../../body';
import type { Dressed } from '../../heads/choices';
import { part } from '../../rows/part';

/** A small child pulls hook and loop apart, and finds nothing on it that comes off. */
const isSmallChild = (_: Traits, { dresser }: Dressed) => dresser === 'small-child';

/** What closes a garment, by whose hands dress it: on a shelf, snaps lie flattest (common practice, no source). */
export const fastenedPart = part<{
  choices: Dressed;
  size: never;
  edge: never;
}>({
  unsuited: [
    {
      choice: 'closedBy',
      from: 'auto',
      to: 'snaps',
      when: (_, { dresser }) => dresser === 'display',
    },
    ...(['snaps', 'ties', 'zip', 'band'] as const).map((from) => ({
      choice: 'closedBy' as const,
      from,
      to: 'hook-and-loop' as const,
      code: 'hook-and-loop-instead',
      when: isSmallChild,
    })),
    {
      choice: 'buttons',
      from: true,
      to: false,
      code: 'buttons-left-out',
      when: isSmallChild,
    },
    // A button is sewn on where edges lap over a fastening: over ties and a zip they do not.
    {
      choice: 'buttons',
      from: true,
      to: false,
      when: (_, { closedBy, dresser }) => ['ties', 'zip', 'band'].includes(closedBy) && dresser !== 'small-child',
    },
  ],
});
