import type { Unit } from '../../body';
import type { Settings } from '../../storage';
import { readTag } from '../../words';

export type Theme = 'auto' | 'light' | 'dark';

/** How the app is set, with what the device suggests where the maker has not said. */
export type Liking = {
  readonly unit: Unit;
  readonly locale: string;
  readonly theme: Theme;
  /** The thumb that types, how large numbers and keys are, and whether a typed number is read back. */
  readonly hand: 'left' | 'right';
  readonly figures: 'usual' | 'large';
  readonly aloud: boolean;
  readonly paper: string;
  /** Pieces that are alike left and right are printed as halves. */
  readonly halves: boolean;
  /** How large words and lines are on paper. */
  readonly print: 'usual' | 'large';
  /** The maker's other toys help to guess what is not measured of the next. */
  readonly learns: boolean;
  /** What a wardrobe is sorted by. */
  readonly sorting: 'newest' | 'name' | 'made';
  /** Whether all is measured, or the few numbers that tell most. */
  readonly way: 'whole' | 'short';
  /** What this device's printer needs everything to be drawn larger by. */
  readonly correction: number;
  /** How many dots of this device's screen a millimetre takes; null until a card was laid on it. */
  readonly dotsPerMm: number | null;
};

/** Territories that measure in inches and print on US Letter (Unicode CLDR, supplemental measurementData). */
const INCHES = ['US', 'LR', 'MM'];
const LETTER = ['BZ', 'CA', 'CL', 'CO', 'CR', 'GT', 'MX', 'NI', 'PA', 'PH', 'PR', 'SV', 'US', 'VE'];

/** @param device the languages that the browser names, the liked one first; nothing is believed of them, nor of what was kept. */
export function likingFrom(settings: Settings, device: unknown): Liking {
  const tags: readonly unknown[] = Array.isArray(device) ? device : [];
  const territory = territoryOf(tags[0]);
  const correction = settings['device-print-correction'];
  const dots = settings['device-dots-per-mm'];
  return {
    unit: oneOf(settings.unit, ['in', 'cm']) ?? (INCHES.includes(territory) ? 'in' : 'cm'),
    locale: [settings.locale, ...tags].map(readTag).find((tag) => tag !== null) ?? 'en',
    theme: oneOf(settings.theme, ['auto', 'light', 'dark']) ?? 'auto',
    hand: oneOf(settings.hand, ['left', 'right']) ?? 'right',
    figures: oneOf(settings.figures, ['usual', 'large']) ?? 'usual',
    aloud: settings.aloud === true,
    paper: typeof settings.paper === 'string' ? settings.paper : LETTER.includes(territory) ? 'letter' : 'a4',
    halves: settings.halves !== false,
    print: oneOf(settings.print, ['usual', 'large']) ?? 'usual',
    learns: settings.learns !== false,
    sorting: oneOf(settings.sorting, ['newest', 'name', 'made']) ?? 'newest',
    way: settings.way === 'short' ? 'short' : 'whole',
    dotsPerMm: typeof dots === 'number' && dots > 1 && dots < MOST_DOTS_PER_MM ? dots : null,
    correction: typeof correction === 'number' && Math.abs(correction - 1) <= LARGEST_CORRECTION ? correction : 1,
  };
}

/** No screen is finer. */
const MOST_DOTS_PER_MM = 60;

/** As the printing room has it (`app/drafting/sheets/`), which no first page may load. */
const LARGEST_CORRECTION = 0.1;

function territoryOf(tag: unknown): string {
  try {
    return new Intl.Locale(String(tag ?? 'en-US')).maximize().region ?? 'US';
  } catch {
    return 'US';
  }
}

function oneOf<const V extends string>(value: unknown, of: readonly V[]): V | undefined {
  return of.find((each) => each === value);
}
