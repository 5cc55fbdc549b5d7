/** Names the currency at the end of a question, where there is one. Example: → ', in EUR'. */
export const inCurrency = ({ currency }: { readonly currency: string }): string =>
  currency === 'unknown' ? '' : `, in ${currency}`;
