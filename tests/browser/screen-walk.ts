import type { Maker } from './maker';

/** Every screen in the order a maker meets them, each reached from the one before: for pictures and for checks of all. */
export const screenWalk: readonly (readonly [name: string, reach: (maker: Maker) => Promise<unknown>])[] = [
  ['welcome', (maker) => maker.open()],
  ['toy', (maker) => maker.borrow('Bramble')],
  ['garments', (maker) => maker.press(/^Make something/)],
  ['choices-drawn', (maker) => maker.choose(/hooded top/i)],
  ['pattern', (maker) => maker.go('pattern', 'Put it on paper')],
  ['print', (maker) => maker.go('print', 'Save the PDF')],
  ['settings', (maker) => maker.at('settings')],
  ['backup', (maker) => maker.at('settings/backup')],
  ['about', (maker) => maker.at('settings/about')],
  ['trouble', (maker) => maker.at('toy/nobody')],
  ['name', (maker) => maker.at('new')],
  ['kind', (maker) => maker.name('Thistle')],
  ['looks', (maker) => maker.kind('Two arms')],
  ['choices', async (maker) => maker.press('Next: what to make').then(() => maker.choose(/hooded top/i))],
  ['marks', (maker) => maker.press('Next: threads and marks')],
  ['step', (maker) => maker.press('The marks are on')],
  ['step-typed', (maker) => maker.type('17½')],
  ['step-again', (maker) => maker.again('17⅜')],
  ['step-wrong', async (maker) => maker.step('body-girth').then(() => maker.wrong('5 1/'))],
  ['step-flag', (maker) => maker.doubt()],
  ['step-wish', (maker) => maker.step('body-length')],
  ['step-cm', (maker) => maker.press('centimetres')],
  ['review', (maker) => maker.go('review', 'Draw the pattern')],
  ['toys', (maker) => maker.toys()],
];
