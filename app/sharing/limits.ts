/** What a card may hold at most; every form of it obeys these. Changing one changes what older apps refuse. */
export const READINGS_A_MEASURE = 5;
export const CARD_BYTES = 64 * 1024;
export const PHOTO_BYTES = 40 * 1024;
/** Garments in one card; and letters in the ids, choices and dates of an order. */
export const ORDERS = 20;
export const ORDER_WORD_CHARACTERS = 60;
/** How many skipped things are listed, and with how many letters each: a hostile card must not fill the screen. */
export const SKIPPED_LISTED = 40;
export const SKIPPED_CHARACTERS = 40;
