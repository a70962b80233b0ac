/** ISO/IEC 7810: a card of format ID-1 (bank cards, identity cards) measures 85.60 × 53.98 mm, its corners a radius of 3.18. */
export const BANK_CARD_MM = { width: 85.6, height: 53.98, corner: 3.18 } as const;
