import type { BodyKind, MeasureId, Mm, Order, SizeId, Traits } from '../body';

/** Moments are milliseconds since 1970 by the device's clock. */
export type Moment = number;

/** One toy. `kept` remembers flags the maker chose to keep: what was kept, by flag, as the screen words its key. */
export type Toy = {
  readonly id: string;
  readonly name: string;
  readonly kind: BodyKind;
  readonly traits: Traits;
  readonly note: string;
  readonly corrections: { readonly [S in SizeId]?: Mm };
  readonly kept: Readonly<Record<string, string | number>>;
  readonly createdAt: Moment;
  readonly changedAt: Moment;
};

/**
 * One number from the tape. Never overwritten: measuring anew begins a new set (named by the moment it began), and
 * the newest set counts. A reading taken back stays, marked, so that an older backup cannot bring it back.
 */
export type Reading = {
  readonly id: string;
  readonly toyId: string;
  readonly measureId: MeasureId;
  readonly mm: Mm;
  readonly from: 'tape' | 'photo';
  readonly set: Moment;
  readonly takenAt: Moment;
  readonly removedAt?: Moment;
};

/** A garment ordered for a toy. */
export type Garment = {
  readonly id: string;
  readonly toyId: string;
  readonly order: Order;
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

/** A picture of a toy. Bytes rather than a Blob: WebKit has lost stored Blobs before (webkit.org bug 198278 and kin). */
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

/** Facts about the store itself: the sentinel that says it was here before. */
export type Fact = { readonly id: 'sentinel'; readonly at: Moment };
