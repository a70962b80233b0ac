import type { BodyKind, MeasureId, Mm, Order, SizeId, Traits, Unit } from '../body';

/**
 * Milliseconds since 1970. `createdAt` and `takenAt` are the device's clock, for people to read; `changedAt`, `set`, `turn`,
 * `removedAt` and a place's `at` tell which is later, whatever the clock said (see clock.ts).
 */
export type Moment = number;

export const players = ['young', 'older', 'grown'] as const;
export type Player = (typeof players)[number];

/**
 * One toy. `kept` remembers flags the maker chose to keep: what was kept, by flag, as the screen words its key. `unit` is its
 * own, where it is not measured as the app is set; `plays` whose hands it is for, as far as she said.
 */
export type Toy = {
  readonly id: string;
  readonly name: string;
  readonly kind: BodyKind;
  readonly traits: Traits;
  readonly note: string;
  readonly corrections: { readonly [S in SizeId]?: Mm };
  readonly kept: Readonly<Record<string, string | number>>;
  readonly unit?: Unit;
  readonly plays?: Player;
  readonly createdAt: Moment;
  readonly changedAt: Moment;
};

/**
 * One number from the tape. Never overwritten: measuring anew begins a new set (named by the turn it began with), and
 * the newest set counts; `turn` is the order within it, a counter per toy and measure. A reading taken back stays,
 * marked, so that an older backup cannot bring it back; `changedAt` is when it was taken, marked or put back.
 */
export type Reading = {
  readonly id: string;
  readonly toyId: string;
  readonly measureId: MeasureId;
  readonly mm: Mm;
  readonly from: 'tape' | 'photo';
  readonly set: Moment;
  readonly turn: Moment;
  readonly takenAt: Moment;
  readonly removedAt?: Moment;
  readonly changedAt: Moment;
};

/**
 * A garment as it was put on paper: for whom, what was ordered, the numbers it was drawn from, the finished sizes it came to
 * (mm, by the words that name them), and the engine that drew it.
 */
export type Made = {
  readonly at: Moment;
  readonly engine: string;
  readonly toyId: string;
  readonly toy: string;
  readonly order: Order;
  readonly measures: { readonly [M in MeasureId]?: Mm };
  readonly sizes: Readonly<Record<string, Mm>>;
};

/**
 * A garment ordered for a toy; `sewn` names the steps of its sewing that are done. `made` is how it was last put on paper,
 * `like` the garment it is made again from; `note` says what fitted, `awayAt` when it was put away.
 */
export type Garment = {
  readonly id: string;
  readonly toyId: string;
  readonly order: Order;
  readonly sewn?: readonly string[];
  readonly made?: Made;
  readonly like?: Made;
  readonly note?: string;
  readonly awayAt?: Moment;
  readonly createdAt: Moment;
  readonly changedAt: Moment;
};

/** How far the maker has come with a toy; `step` is the flow's own name for it. One a toy; the newest is where she was. */
export type Place = {
  readonly toyId: string;
  readonly garmentId: string | null;
  readonly step: string;
  readonly at: Moment;
};

/** A picture of a toy, or of a garment: `toyId` is the id of either. Bytes rather than a Blob: WebKit has lost stored Blobs before (webkit.org bug 198278 and kin). */
export type Photo = {
  readonly toyId: string;
  readonly type: 'image/jpeg' | 'image/png' | 'image/webp';
  readonly bytes: ArrayBuffer;
  readonly changedAt: Moment;
};

export type SettingValue = string | number | boolean;
export type Setting = {
  readonly key: string;
  readonly value: SettingValue;
  readonly changedAt: Moment;
};

/** A record that could not be read, kept word for word. */
export type Aside = {
  readonly id?: number;
  readonly table: TableName;
  readonly at: Moment;
  readonly row: unknown;
};

/** What the store's content is made of; the order is the order of writing. */
export type Contents = {
  readonly toys: readonly Toy[];
  readonly readings: readonly Reading[];
  readonly garments: readonly Garment[];
  readonly places: readonly Place[];
  readonly settings: readonly Setting[];
  readonly photos: readonly Photo[];
};
export type TableName = keyof Contents;

/** Everything as it was before a backup replaced it; only the latest is kept. */
export type Copy = {
  readonly id: 'before-replace';
  readonly at: Moment;
  readonly contents: Contents;
  readonly aside: readonly Aside[];
};

/**
 * Facts about the store itself: the sentinel that says it was here before; how many readings were kept since the last
 * backup; the folder the maker chose for a second copy.
 */
export type Fact =
  | { readonly id: 'sentinel'; readonly at: Moment }
  | { readonly id: 'since-backup'; readonly readings: number }
  | { readonly id: 'copy-folder'; readonly folder: FileSystemDirectoryHandle };

/** What stands in a field and is not kept yet; one a toy and measure (see typed.ts). */
export type Typed = {
  readonly id: string;
  readonly toyId: string;
  readonly garmentId: string;
  readonly measureId: string;
  readonly text: string;
  readonly unit: string;
  readonly locale: string;
  readonly adding: boolean;
  /** The reading this one takes the place of. */
  readonly instead?: string;
};
