import jpeg from 'jpeg-js';
import { describe, expect, test } from 'vitest';
import { readCard } from '../../app/sharing';
import { borrowed, saved, twoPhones } from './two-phones';

const phones = twoPhones();

describe('a photo in a card', () => {
  test('goes along in the file only, drawn anew: nothing that the camera wrote is left', async () => {
    const maker = await borrowed(phones.sender.page, phones.site, 'Bramble');
    const { page } = maker;
    const photo = withCameraData(jpegOf(64));
    expect(photo.includes('GPSSECRET')).toBe(true);
    await page.locator('input[type=file]').setInputFiles({ name: 'toy.jpg', mimeType: 'image/jpeg', buffer: photo });
    await page.getByRole('button', { name: 'Another photo' }).waitFor();
    await maker.press('Share its card');
    await page.getByRole('checkbox', { name: /the photo/ }).waitFor();
    const read = readCard((await saved(page, 'Save as a file')).toString());
    if (!read.ok) expect.unreachable(read.fault.code);
    const sent = Buffer.from(read.card.photo?.split(',')[1] ?? '', 'base64');
    expect(sent.subarray(0, 3)).toEqual(Buffer.from([0xff, 0xd8, 0xff]));
    expect(sent.length).toBeLessThanOrEqual(40 * 1024);
    for (const trace of ['GPSSECRET', 'Exif']) expect(sent.includes(trace), trace).toBe(false);
    await page.getByRole('checkbox', { name: /the photo/ }).uncheck();
    const without = readCard((await saved(page, 'Save as a file')).toString());
    expect(without.ok && without.card.photo).toBeUndefined();
  });
});

/** A grey square. */
const jpegOf = (side: number): Buffer =>
  jpeg.encode({ width: side, height: side, data: Buffer.alloc(side * side * 4, 120) }, 80).data;

/** A JPEG with an APP1 segment put in, as cameras write one. */
function withCameraData(plain: Buffer): Buffer {
  const content = Buffer.from('Exif\0\0GPSSECRET');
  const segment = Buffer.alloc(4);
  segment.writeUInt16BE(0xffe1, 0);
  segment.writeUInt16BE(content.length + 2, 2);
  return Buffer.concat([plain.subarray(0, 2), segment, content, plain.subarray(2)]);
}
