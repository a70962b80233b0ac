import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

type InSightProps = { readonly class: string; readonly children: ComponentChildren };

/** What has just opened below what was pressed: brought into sight, as far as it is not there already. */
export function InSight({ children, class: name }: InSightProps) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => place.current?.scrollIntoView({ block: 'nearest' }), []);
  return (
    <div class={name} ref={place}>
      {children}
    </div>
  );
}
