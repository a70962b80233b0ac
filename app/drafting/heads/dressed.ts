import { buttonsChoice, closedByChoice, type Dressed, dresserChoice, isOldBand, laps, type Opens } from './choices';

/** What is asked of a garment that closes: by whom it is put on, and what with. */
export const dressedChoices = {
  dresser: dresserChoice,
  closedBy: closedByChoice,
  buttons: buttonsChoice,
} as const;
export const dressedAuto = { closedBy: 'hook-and-loop' } as const;

/** Asked only where something closes; small hands are given hook and loop, and nothing that comes off. */
export const dressedSuits = <C extends object>(closes: (choices: C) => boolean) => ({
  closedBy: (choices: C & Dressed, value: Dressed['closedBy']) =>
    closes(choices) && (choices.dresser !== 'small-child' || value === 'auto'),
  buttons: (choices: C & Dressed) =>
    closes(choices) &&
    choices.dresser !== 'small-child' &&
    choices.closedBy !== 'ties' &&
    laps(choices) &&
    !isOldBand(choices),
});

/** The same for what has no ease, and so is made alike for everybody but for what closes it. */
export const looseSuits = {
  ...dressedSuits(() => true),
  dresser: ({ closedBy, buttons }: Dressed) => closedBy !== 'hook-and-loop' || buttons,
};

/** A top that goes on over the head, or opens. */
export const mayOpen = ({ opening }: Opens) => opening !== 'none' && opening !== 'slit';
