import { useEffect, useState } from 'preact/hooks';

/** An address for a picture as long as it is shown; null without one, and until the first is there. */
export function useAddress(picture: Blob | null): string | null {
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    const made = picture && URL.createObjectURL(picture);
    setAddress(made);
    return () => {
      if (made) URL.revokeObjectURL(made);
    };
  }, [picture]);
  return address;
}
