/** A page without screens: rooms of the app, to be called by tests from outside. */
import * as storage from '../../../app/storage';
import * as work from '../../../app/work/bridge';
import { enterReadings, fillStore } from './deeds';

declare global {
  interface Window {
    rooms: {
      storage: typeof storage;
      work: typeof work;
      enterReadings: typeof enterReadings;
      fillStore: typeof fillStore;
    };
  }
}

window.rooms = { storage, work, enterReadings, fillStore };
