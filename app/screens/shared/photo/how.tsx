import './how.css';

/** What to do before the photo is taken, one after the other. */
export const How = ({ steps }: { readonly steps: readonly string[] }) => (
  <ol class="photo-how">
    {steps.map((step) => (
      <li key={step}>{step}</li>
    ))}
  </ol>
);
