import { Page, type PageProps } from './page';
import { TapeLine } from './tape-line';

/** A page that is one of several on the way: how far along it is, in words and as a strip of tape. */
export function WayPage(page: Omit<PageProps, 'under'>) {
  return <Page {...page} under={page.progress && <TapeLine {...page.progress} />} />;
}
