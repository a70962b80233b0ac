import type { StoreCode } from '../errors';
import type { deeds } from './deeds';

/** What the page and the thread of its desk say to each other. */
export type Deeds = typeof deeds;
export type Asked = { readonly id: number; readonly deed: keyof Deeds; readonly given: readonly unknown[] };
export type Answer =
  | { readonly id: number; readonly made: unknown }
  | { readonly id: number; readonly code: StoreCode };
