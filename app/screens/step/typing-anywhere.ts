import type { RefObject } from 'preact';
import { useEffect } from 'preact/hooks';

/** A digit typed on a hardware keyboard lands in the field, wherever on the screen the focus is. */
export function useTypingAnywhere(field: RefObject<HTMLInputElement | null>): void {
  useEffect(() => {
    const lead = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey || !/^[\d.,]$/.test(event.key)) return;
      if (!(event.target instanceof HTMLInputElement)) field.current?.focus();
    };
    document.addEventListener('keydown', lead);
    return () => document.removeEventListener('keydown', lead);
  }, [field]);
}
