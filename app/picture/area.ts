/** Pixels; both at least 1. A picture that its file turns by a quarter has them the other way round. */
export type Area = { readonly width: number; readonly height: number };
