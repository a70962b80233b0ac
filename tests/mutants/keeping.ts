import { breaksIn } from './break';

/** Storage and sharing. */
export const keepingBreaks = [
  ...breaksIn('app/storage', [
    {
      what: 'a removal that a merge undoes',
      from: 'changedAt: changedAt ?? removedAt ?? takenAt',
      to: 'changedAt: takenAt',
      tests: 'unit/storage-merge',
    },
    {
      what: 'a merge where the older wins',
      from: 'plainText(row) > plainText(other) : !(two >= one)',
      to: 'plainText(row) > plainText(other) : two >= one',
      tests: 'unit/storage-backup',
    },
    {
      what: 'a replace that takes what belongs to the device',
      from: '.filter((setting) => !isOfDevice(setting.key)).delete()',
      to: '.filter(() => true).delete()',
      tests: 'unit/storage-backup',
    },
    {
      what: 'a replace without a copy',
      from: 'await keepCopy(store); await clear(store); await put(store, there, there.aside);',
      to: 'await clear(store); await put(store, there, there.aside);',
      tests: 'unit/storage-backup',
    },
    {
      what: 'a retyped number beside the wrong one',
      from: 'if (mistyped) await store.readings.put({ ...mistyped, removedAt: turn, changedAt: turn })',
      to: 'if (mistyped) await store.readings.put({ ...mistyped })',
      tests: 'unit/storage-mistyped',
    },
    {
      what: 'a retyped number in a set of its own',
      from: 'mistyped?.set ?? current?.[0]?.set',
      to: 'current?.[0]?.set',
      tests: 'unit/storage-mistyped',
    },
    {
      what: 'a new set beside the old one',
      from: '(current[0]?.set ?? 0) < reading.set',
      to: '(current[0]?.set ?? 0) > reading.set',
      tests: 'unit/storage',
    },
    {
      what: 'readings counted that were taken back',
      from: '.filter((reading) => reading.removedAt === undefined)',
      to: '.filter((reading) => reading.id !== undefined)',
      tests: 'unit/storage',
    },
    {
      what: 'a reminder too late',
      from: 'READINGS_BEFORE_REMINDER = 10',
      to: 'READINGS_BEFORE_REMINDER = 11',
      tests: 'unit/storage',
    },
    {
      what: 'a changed backup taken for whole',
      from: 'const changed = sum !== ((await sumOf(',
      to: 'const changed = sum === ((await sumOf(',
      tests: 'unit/storage-backup',
    },
  ]),
  ...breaksIn('app/sharing', [
    {
      what: 'signs lost in a code',
      from: 'value < 0 ? -2 * value - 1 : 2 * value, order);',
      to: '2 * Math.abs(value), order);',
      tests: 'unit/sharing-code',
    },
    {
      what: 'bits in the wrong order',
      from: '(7 - (reader.at++ & 7))',
      to: '(reader.at++ & 7)',
      tests: 'unit/sharing-code',
    },
    {
      what: 'a link that keeps what followed the address',
      from: "home.replace(/[?#].*$/su, '')",
      to: 'home',
      tests: 'unit/sharing',
    },
  ]),
];
