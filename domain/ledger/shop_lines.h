// shop_lines.h - the lines of each head that more than one pass over the books goes through, put in order once.
#pragma once

#include "domain/facts/lines_of.h"

namespace dyestead {

struct ShopLines {
    explicit ShopLines(const Shop& shop)
        : delivered{shop},
          counted{shop},
          sown{shop},
          fed{shop},
          steeped{shop},
          steps{shop},
          dried_further{shop},
          poured{shop},
          wrapped{shop},
          taken{shop},
          sold{shop},
          powder{shop} {}

    LinesOf<DeliveryLine> delivered;
    LinesOf<CountLine> counted;
    LinesOf<PlantingUse> sown;
    LinesOf<TendingUse> fed;
    LinesOf<VatUse> steeped;
    LinesOf<VatStep> steps;
    LinesOf<DryingLot> dried_further;
    LinesOf<BatchUse> poured;
    LinesOf<WrappingUse> wrapped;
    LinesOf<FairLine> taken;  // to a fair
    LinesOf<SaleLine> sold;
    LinesOf<PowderLine> powder;
};

}  // namespace dyestead
