import type { Body, BodyKind, TraitId, Traits, traitValues } from '../body';
import { portrait, traitPicture } from '../measuring';
import { FigurePicture } from './figure';
import './portrait.css';

/** A toy as its numbers make it, without threads and tape: it stands for the toy wherever there is no photo. */
export function Portrait({ body }: { readonly body: Pick<Body, 'kind' | 'traits' | 'sizes'> }) {
  return (
    <span class="portrait">
      <FigurePicture figure={portrait(body.kind, body.traits, body.sizes)} />
    </span>
  );
}

type TraitPictureProps<T extends TraitId> = {
  readonly kind: BodyKind;
  readonly trait: T;
  readonly value: (typeof traitValues)[T][number];
  /** What is chosen of the others. */
  readonly looks: Traits;
};

/** What one value of a trait looks like. */
export function TraitPicture<T extends TraitId>({ kind, trait, value, looks }: TraitPictureProps<T>) {
  return (
    <span class="portrait">
      <FigurePicture figure={traitPicture(kind, trait, value, looks)} />
    </span>
  );
}
