import { useState } from 'preact/hooks';
import { useWords } from '../../../parts';
import { engineVersion } from '../engine';
import { whatHappened } from './happened';

/** Copies what went wrong, for the maker to send to whoever helps her. It holds no names and no readings. */
export function CopyHappened({ code }: { readonly code?: string }) {
  const { say } = useWords();
  const [copied, setCopied] = useState<boolean | null>(null);
  const text = [
    `Hemling ${engineVersion}`,
    navigator.userAgent,
    code ?? '',
    ...whatHappened().map((each) => `${each.at} ${each.code} ${each.detail}`),
  ]
    .filter(Boolean)
    .join('\n');
  const copy = () =>
    navigator.clipboard.writeText(text).then(
      () => setCopied(true),
      () => setCopied(false),
    );
  return (
    <div>
      <button type="button" class="plain" onClick={copy}>
        {say('screen.happened.copy')}
      </button>
      <p class="soft small" role="status">
        {copied !== null && say(copied ? 'screen.happened.copied' : 'screen.happened.by-hand')}
      </p>
      {copied === false && <pre class="happened">{text}</pre>}
    </div>
  );
}
