import type { Ref } from 'preact';

type NameInputProps = {
  readonly id: string;
  readonly value: string;
  /** In code units. */
  readonly longest: number;
  /** What is wrong stands in the element of this id with `-wrong` after it. */
  readonly wrong: boolean;
  readonly onName: (name: string) => void;
  readonly field?: Ref<HTMLInputElement>;
};

/** Where a name is typed; its label and what is wrong with it are the caller's. */
export function NameInput({ id, value, longest, wrong, onName, field }: NameInputProps) {
  return (
    <input
      {...(field && { ref: field })}
      id={id}
      value={value}
      maxLength={longest}
      autoComplete="off"
      aria-invalid={wrong}
      aria-describedby={`${id}-wrong`}
      onInput={(event) => onName(event.currentTarget.value)}
    />
  );
}
