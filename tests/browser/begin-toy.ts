import type { Maker } from './maker';

/** From the first screen to the first step of a toy of her own, Bramble, who is to have a hooded top. */
export async function beginToy(maker: Maker): Promise<void> {
  const { page } = maker;
  await maker.press('Measure a toy');
  await page.getByRole('textbox').fill('Bramble');
  for (const title of [/kind of body/, /built/, /wear/]) {
    await maker.press(/^Next/);
    await page.getByRole('heading', { level: 1, name: title }).waitFor();
  }
  await maker.press(/Hooded top/);
  await maker.press(/^Next/);
  await maker.press('The marks are on');
  await maker.field().waitFor();
}
