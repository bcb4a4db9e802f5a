package patinary.asking;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.selling.Channel;
import patinary.selling.ChannelTerms;
import patinary.selling.Channels;
import patinary.selling.FeeRule;
import patinary.selling.UsualTerms;

/** The channels with their fee rules and what is usual there. */
@Service
@Transactional(readOnly = true)
class ChannelRules {

    /** A channel as the sums need it. */
    record Known(UUID id, String name, UUID moneyPlaceId, List<FeeRule> rules, UsualTerms usual) {

        @Nullable
        FeeRule on(LocalDate day) {
            return rules.stream()
                    .filter(rule -> !rule.validFrom().isAfter(day))
                    .max(java.util.Comparator.comparing(FeeRule::validFrom))
                    .orElse(null);
        }
    }

    private final Channels channels;
    private final ChannelTerms terms;

    ChannelRules(Channels channels, ChannelTerms terms) {
        this.channels = channels;
        this.terms = terms;
    }

    public List<Known> all() {
        Map<UUID, UsualTerms> usual = terms.all();
        return channels.findAllByOrderByName().stream()
                .map(channel -> known(channel, usual.getOrDefault(channel.id(), UsualTerms.NONE)))
                .toList();
    }

    public Optional<Known> find(UUID id) {
        return channels.findById(id).map(channel -> known(channel, terms.of(id)));
    }

    private static Known known(Channel channel, UsualTerms usual) {
        return new Known(channel.id(), channel.name(), channel.moneyPlaceId(), channel.fees(), usual);
    }
}
