import type { ComponentChildren } from 'preact';
import type { Head } from '../../../drafting/catalogue';
import type { Garment } from '../../../storage';
import { useLiking } from '../liking';
import { Trouble } from '../trouble/trouble';
import { type Known, WithToy } from '../with-toy';
import { useGarments } from './garments-known';
import { type Making, useMaking } from './making';
import { useTaught } from './taught';

type WithMakingProps = {
  readonly params: Readonly<Record<string, string>>;
  readonly children: (making: Making) => ComponentChildren;
};

/** Shows a screen about one garment of one toy, once both are read and the garment's rows are here. */
export function WithMaking({ params, children }: WithMakingProps) {
  const garments = useGarments();
  if (!garments) return <main class="loading" aria-busy="true" />;
  return (
    <WithToy toyId={params.toy ?? ''}>
      {(known) => {
        const garment = known.garments.find(({ id }) => id === params.garment);
        const row = garments.find(({ id }) => id === garment?.order.garment);
        if (!garment || !row)
          return (
            <Trouble code="garment-gone" act={{ words: 'screen.trouble.home', run: () => location.replace('#/') }} />
          );
        return <Made known={known} garment={garment} row={row} render={children} />;
      }}
    </WithToy>
  );
}

type MadeProps = {
  readonly known: Known;
  readonly garment: Garment;
  readonly row: Head;
  readonly render: WithMakingProps['children'];
};

function Made({ known: { toy, readings }, garment, row, render }: MadeProps) {
  const taught = useTaught(toy);
  const { way } = useLiking();
  return <>{render(useMaking({ toy, garment, row, readings, taught, way }))}</>;
}
