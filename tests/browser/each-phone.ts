import { afterAll, beforeAll, beforeEach, expect, onTestFinished } from 'vitest';
import { beginToy } from './begin-toy';
import { openSite, phone, type Site, type Visit } from './browser';
import { Maker } from './maker';

/** For every test of a file a phone of its own with an empty store, on which nothing went wrong in the end. */
export function eachPhone() {
  let site: Site;
  let visit: Visit;
  let maker: Maker;
  beforeAll(async () => {
    site = await openSite({ keeps: false });
  });
  afterAll(() => site.close());
  beforeEach(async () => {
    visit = await site.visit({ ...phone, locale: 'en-US' });
    maker = new Maker(visit.page, site.address);
    const { wrong, close } = visit;
    onTestFinished(async () => {
      expect(wrong).toEqual([]);
      await close();
    });
  });
  return {
    get maker() {
      return maker;
    },
    get page() {
      return visit.page;
    },
    /** From the first screen to the step of a measure of a toy of her own. */
    atStep: async (measure: string) => {
      await maker.open();
      await beginToy(maker);
      await maker.step(measure);
    },
  };
}
