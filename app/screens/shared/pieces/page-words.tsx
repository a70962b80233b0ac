import type { Draft } from '../../../drafting/draft-types';
import type { Layout, Page } from '../../../drafting/sheets';
import { pageTold } from '../../../drafting/told';
import { useWords } from '../../../parts';
import './words.css';

type PageWordsProps = { readonly draft: Draft; readonly layout: Layout; readonly page: Page };

/** What lies on a page, as text. */
export function PageWords({ draft, layout, page }: PageWordsProps) {
  const { say } = useWords();
  return (
    <ul class="in-words">
      {pageTold(draft, layout, page, say).map((words) => (
        <li key={words}>{words}</li>
      ))}
    </ul>
  );
}
