import type { RefObject } from 'preact';
import { useLayoutEffect } from 'preact/hooks';

/**
 * A digit typed on a hardware keyboard lands in the field, wherever on the screen the focus is; while a doubt stands in
 * the field's place, `anew` hears it.
 */
export function useTypingAnywhere(
  field: RefObject<HTMLInputElement | null>,
  anew: ((digit: string) => void) | null,
): void {
  useLayoutEffect(() => {
    const lead = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey || !/^[\d.,]$/.test(event.key)) return;
      if (event.target instanceof HTMLInputElement) return;
      if (field.current) return field.current.focus();
      if (!anew) return;
      event.preventDefault();
      anew(event.key);
    };
    document.addEventListener('keydown', lead);
    return () => document.removeEventListener('keydown', lead);
  }, [field, anew]);
}
