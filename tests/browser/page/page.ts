/** A page without screens: rooms of the app, to be called by tests from outside. */
import * as inbox from '../../../app/sharing/inbox';
import * as storage from '../../../app/storage';
import * as work from '../../../app/work/bridge';
import { enterReadings, fillStore } from './deeds';

declare global {
  interface Window {
    rooms: {
      inbox: typeof inbox;
      storage: typeof storage;
      work: typeof work;
      enterReadings: typeof enterReadings;
      fillStore: typeof fillStore;
    };
  }
}

window.rooms = { inbox, storage, work, enterReadings, fillStore };
