import './icon.css';

/** Small pencil drawings of our own, 24 by 24, drawn in the colour of the words beside them. */
const drawings = {
  back: 'M14.5 5.5 8 12l6.5 6.5',
  on: 'M9.5 5.5 16 12l-6.5 6.5',
  plus: 'M12 5v14M5 12h14',
  check: 'M5 12.8 10 17.5 19 7',
  erase: 'M9 6h11v12H9l-6-6zM12 9.5l5 5m0-5-5 5',
  speak: 'M4 10v4h3.5l4.5 4V6l-4.5 4zM15.5 9.5a3.5 3.5 0 0 1 0 5M18 7a7 7 0 0 1 0 10',
  share: 'M12 15V4m-4 3.5L12 4l4 3.5M6 11v8.5h12V11',
  save: 'M12 4v11m-4-3.5 4 3.5 4-3.5M5 19.5h14',
  pencil: 'M5 19l1-4L16 5l3 3L9 18zM14 7l3 3',
  photo: 'M4 8h4l1.5-2.500h5L16 8h4v11H4zM12 16.500a3.3 3.3 0 1 0 0-6.6 3.3 3.3 0 0 0 0 6.6',
  seek: 'M10.5 16.500a6 6 0 1 0 0-12 6 6 0 0 0 0 12zM15 15l5 5',
  more: 'M5.5 12h.01M12 12h.01M18.5 12h.01',
  bin: 'M5 7h14M9.5 7V4.500h5V7M7 7l1 12.500h8L17 7M10.5 10.500v5.500M13.5 10.500v5.5',
  copy: 'M8.5 8.500h10v11h-10zM5.5 15.500V4.500h10',
  again: 'M18.5 8A7.5 7.5 0 1 0 19.5 13M19 4v4.500h-4.5',
  warn: 'M12 4.5 20.5 19h-17zM12 10v4M12 16.500v.01',
  settings:
    'M12 20.500a8.5 8.5 0 1 0 0-17 8.5 8.5 0 0 0 0 17zM9.5 9.500v.01M14.5 9.500v.01M9.5 14.500v.01M14.5 14.500v.01',
  scissors: 'M7 9a2.5 2.5 0 1 0 0-5 2.5 2.5 0 0 0 0 5zM7 20a2.5 2.5 0 1 0 0-5 2.5 2.5 0 0 0 0 5zM9 8l11 9M9 16 20 7',
  cross: 'M6.5 6.500l11 11m0-11-11 11',
} as const;

export type IconName = keyof typeof drawings;

/** A drawing that says nothing by itself: words or a label always stand with it. */
export function Icon({ name }: { readonly name: IconName }) {
  return (
    <svg
      class={name === 'back' || name === 'on' ? 'icon turns' : 'icon'}
      viewBox="0 0 24 24"
      aria-hidden="true"
      focusable="false"
    >
      <path d={drawings[name]} />
    </svg>
  );
}
