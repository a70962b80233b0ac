import type { ComponentChildren } from 'preact';
import { useMemo } from 'preact/hooks';
import type { Garment } from '../../../storage';
import { useLiking } from '../liking';
import { Trouble } from '../trouble/trouble';
import { type Known, WithToy } from '../with-toy';
import { useGarments } from './garments-known';
import { type Making, type Ordered, useMaking } from './making';
import { idsOf, outfitId } from './outfit';
import { useTaught } from './taught';

type WithMakingProps = {
  readonly params: Readonly<Record<string, string>>;
  /** The screen can be about an outfit too: an address then names several garments. */
  readonly several?: boolean;
  readonly children: (making: Making) => ComponentChildren;
};

/** Shows a screen about one garment of one toy, once both are read and the garment's rows are here. */
export function WithMaking({ params, several = false, children }: WithMakingProps) {
  const garments = useGarments();
  if (!garments) return <main class="loading" aria-busy="true" />;
  return (
    <WithToy toyId={params.toy ?? ''}>
      {(known) => {
        const ordered = idsOf(params.garment, several).flatMap((id): Ordered[] => {
          const garment = known.garments.find((each) => each.id === id);
          const row = garments.find((each) => each.id === garment?.order.garment);
          return garment && row ? [{ garment, row }] : [];
        });
        const [first, ...also] = ordered;
        if (!first)
          return (
            <Trouble code="garment-gone" act={{ words: 'screen.trouble.home', run: () => location.replace('#/') }} />
          );
        return <Made known={known} first={first} also={also} render={children} />;
      }}
    </WithToy>
  );
}

type MadeProps = {
  readonly known: Known;
  readonly first: Ordered;
  readonly also: readonly Ordered[];
  readonly render: WithMakingProps['children'];
};

function Made({ known: { toy, readings }, first, also, render }: MadeProps) {
  const taught = useTaught(toy);
  const { way } = useLiking();
  const key = [first, ...also].map(({ garment }) => `${garment.id} ${garment.changedAt}`).join();
  const ordered = useMemo(() => ({ ...nameOf(first, also), row: first.row, also }), [key]);
  return <>{render(useMaking({ toy, readings, taught, way, ...ordered }))}</>;
}

/** An outfit goes by the ids of all its garments, so that every way on from here leads on with all of them. */
const nameOf = ({ garment }: Ordered, also: readonly Ordered[]): { garment: Garment } =>
  also.length === 0
    ? { garment }
    : { garment: { ...garment, id: outfitId([garment, ...also.map((each) => each.garment)]) } };
