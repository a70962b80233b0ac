import { papers } from '../../drafting/sheets';
import { Picks, useWords } from '../../parts';
import { PaperPicture } from './paper-picture';

type PaperPicksProps = { readonly paper: string; readonly onPaper: (paper: string) => void };

/** Which paper. */
export function PaperPicks({ paper, onPaper }: PaperPicksProps) {
  const { say } = useWords();
  return (
    <Picks
      legend={say('screen.print.paper')}
      chosen={paper}
      onPick={onPaper}
      picks={Object.entries(papers).map(([id, size]) => ({
        value: id,
        words: say(`paper.${id}`),
        picture: <PaperPicture width={size.width} height={size.height} />,
      }))}
    />
  );
}
