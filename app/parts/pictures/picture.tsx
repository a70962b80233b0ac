import { choicePictures } from './choice-pictures';
import { clothPictures } from './cloth-pictures';
import { garmentPictures } from './garment-pictures';
import type { Picture } from './strokes';
import './picture.css';

type SmallProps = { readonly of: Picture | undefined };

/** A small pencil drawing; nothing where there is none, the words say it all the same. */
function Small({ of }: SmallProps) {
  if (!of) return null;
  return (
    <svg class="picture" viewBox="4 4 64 64" aria-hidden="true" focusable="false">
      {of.map((stroke, index) => (
        <path key={index} class={`picture-${stroke.as}`} d={stroke.d} />
      ))}
    </svg>
  );
}

/** What was kept by another build may name a garment that this one does not have. */
const pictureOf = (id: string): Picture | undefined => (garmentPictures as Readonly<Record<string, Picture>>)[id];

export const GarmentPicture = ({ id }: { readonly id: string }) => <Small of={pictureOf(id)} />;
export const ClothPicture = ({ id }: { readonly id: string }) => <Small of={clothPictures[id]} />;

/** The picture of one value of a choice, or of a fit (`fit`, `close`). */
export const ChoicePicture = ({ choice, value }: { readonly choice: string; readonly value: string }) => (
  <Small of={choicePictures[`${choice}.${value}`]} />
);

export const hasPictures = (choice: string, values: readonly string[]): boolean =>
  values.every((value) => `${choice}.${value}` in choicePictures);
