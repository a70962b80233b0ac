import type { Unit } from '../../body';
import type { Settings } from '../../storage';
import { locales } from '../../words';

export type Theme = 'auto' | 'light' | 'dark';

/** How the app is set, with what the device suggests where the maker has not said. */
export type Liking = {
  readonly unit: Unit;
  readonly locale: string;
  readonly theme: Theme;
  readonly paper: string;
  /** Pieces that are alike left and right are printed as halves. */
  readonly halves: boolean;
  /** What this device's printer needs everything to be drawn larger by. */
  readonly correction: number;
};

/** Territories that measure in inches and print on US Letter (Unicode CLDR, supplemental measurementData). */
const INCHES = ['US', 'LR', 'MM'];
const LETTER = ['BZ', 'CA', 'CL', 'CO', 'CR', 'GT', 'MX', 'NI', 'PA', 'PH', 'PR', 'SV', 'US', 'VE'];

export function likingFrom(settings: Settings, device: readonly string[]): Liking {
  const spoken = device.find((tag) => locales.some((each) => each === new Intl.Locale(tag).language));
  const territory = new Intl.Locale(device[0] ?? 'en-US').maximize().region ?? 'US';
  return {
    unit: oneOf(settings.unit, ['in', 'cm']) ?? (INCHES.includes(territory) ? 'in' : 'cm'),
    locale: typeof settings.locale === 'string' ? settings.locale : (spoken ?? 'en'),
    theme: oneOf(settings.theme, ['auto', 'light', 'dark']) ?? 'auto',
    paper: typeof settings.paper === 'string' ? settings.paper : LETTER.includes(territory) ? 'letter' : 'a4',
    halves: settings.halves !== false,
    correction: Number(settings['device-print-correction'] ?? 1) || 1,
  };
}

function oneOf<const V extends string>(value: unknown, of: readonly V[]): V | undefined {
  return of.find((each) => each === value);
}
