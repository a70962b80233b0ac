import { useRef } from 'preact/hooks';
import { Icon } from '../../../parts';

type PictureButtonProps = {
  readonly kind: 'go' | 'plain';
  readonly words: string;
  readonly camera?: boolean;
  readonly onFile: (file: File) => void;
};

/** Takes a photo, or one there is. */
export function PictureButton({ kind, words, camera = false, onFile }: PictureButtonProps) {
  const file = useRef<HTMLInputElement>(null);
  return (
    <>
      <input
        ref={file}
        class="unseen"
        type="file"
        accept="image/*"
        {...(camera ? { capture: 'environment' as const } : {})}
        tabIndex={-1}
        aria-hidden="true"
        onChange={(event) => {
          const [picture] = event.currentTarget.files ?? [];
          if (picture) onFile(picture);
          event.currentTarget.value = '';
        }}
      />
      <button type="button" class={kind} onClick={() => file.current?.click()}>
        {camera && <Icon name="photo" />}
        {words}
      </button>
    </>
  );
}
