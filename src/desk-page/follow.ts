/** On a page of the site while it is served: loaded again when the site was built anew. */

import { listen } from './listen.ts';

listen({ saved: () => undefined, built: () => location.reload() });
