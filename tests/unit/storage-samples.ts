/** Bytes that begin as a JPEG does; nothing here decodes them. */
export const JPEG = new Blob([Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, 1, 2, 3, 4, 5, 6, 7, 8, 9])], {
  type: 'image/jpeg',
});

export const longest = 'x'.repeat(10_000);
