import { breaksIn } from './break';

/** What is worked out for screens, words, the worker and the command; the service worker. */
export const screenBreaks = [
  ...breaksIn('app/screens', [
    {
      what: 'a swap that swaps nothing',
      from: '{ measure: second, mm: otherOffer }',
      to: '{ measure: second, mm: offer }',
      tests: 'unit/screens-remedy',
    },
    {
      what: 'a remedy beside the wrong number',
      from: "saveReading(toyId, measure, mm, 'tape', { anew: true })",
      to: "saveReading(toyId, measure, mm, 'tape')",
      tests: 'unit/screens-remedy',
    },
    {
      what: 'addresses that are not taken apart',
      from: ".split('/').filter((part) => part !== '')",
      to: ".split('|').filter((part) => part !== '')",
      tests: 'unit/screens-route',
    },
  ]),
  ...breaksIn('app/parts', [
    {
      what: 'a fraction key that cannot be taken back',
      from: 'sixteenths === key.count * 2 ? 0',
      to: 'sixteenths === key.count * 2 ? 2',
      tests: 'unit/parts-keys',
    },
    {
      what: 'a millimetre that is two',
      from: 'Number(tenth || 0) + by',
      to: 'Number(tenth || 0) + 2 * by',
      tests: 'unit/parts-keys',
    },
  ]),
  ...breaksIn('app/words', [
    { what: 'dates a day off', from: 'T00:00:00Z', to: 'T00:00:00+01:00', tests: 'unit/words-formats' },
    {
      what: 'lengths in the other unit',
      from: "return unit === 'in' ? 'in' : 'cm'",
      to: "return unit === 'in' ? 'cm' : 'in'",
      tests: 'unit/words',
    },
    {
      what: 'angles in radians',
      from: '(Number(value) * 180) / Math.PI',
      to: 'Number(value)',
      tests: 'unit/words-formats',
    },
  ]),
  ...breaksIn('app/work', [
    {
      what: 'the earlier request wins',
      from: "if (lane.next) end(lane.next, new WorkError('work-cancelled'))",
      to: "if (lane.next) return end(job, new WorkError('work-cancelled'))",
      tests: 'unit/work-bridge',
    },
    {
      what: 'a crash that is tried again for ever',
      from: 'crashed && job.tries > 1',
      to: 'crashed && job.tries > 1e9',
      tests: 'unit/work-bridge',
    },
  ]),
  ...breaksIn('app/command', [
    {
      what: 'an order’s date of any kind',
      from: 'v.pipe(v.string(), v.isoDate())',
      to: 'v.string()',
      tests: 'unit/draft-command',
    },
    {
      what: 'an order of any size',
      from: 'LARGEST_BYTES = 1024 * 1024',
      to: 'LARGEST_BYTES = 1024 * 1024 * 1024',
      tests: 'unit/draft-command',
    },
  ]),
  ...breaksIn('sw', [
    {
      what: 'the earlier build’s files deleted at once',
      from: 'unwanted.filter((url) => leftLastTime.has(url))',
      to: 'unwanted',
      tests: 'browser/update',
    },
    {
      what: 'what is not kept answered with nothing',
      from: "  if (mode === 'navigate') return firstPage(request);\n",
      to: '',
      tests: 'browser/offline',
    },
  ]),
];
