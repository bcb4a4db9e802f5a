package patinary.shop;

import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.security.web.webauthn.api.Bytes;
import org.springframework.security.web.webauthn.api.ImmutablePublicKeyCredentialUserEntity;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialUserEntity;
import org.springframework.security.web.webauthn.management.PublicKeyCredentialUserEntityRepository;
import org.springframework.stereotype.Component;

/** The people of the shop as a passkey knows them: by their id, which says nothing of them. */
@Component
class PasskeyPeople implements PublicKeyCredentialUserEntityRepository {

    private static final int UUID_BYTES = 16;

    private final People people;

    PasskeyPeople(People people) {
        this.people = people;
    }

    @Override
    public @Nullable PublicKeyCredentialUserEntity findById(Bytes id) {
        return id(id).flatMap(people::findById).map(PasskeyPeople::known).orElse(null);
    }

    @Override
    public @Nullable PublicKeyCredentialUserEntity findByUsername(String name) {
        return people.findByName(name).map(PasskeyPeople::known).orElse(null);
    }

    /** People come and go on their own page. */
    @Override
    public void save(PublicKeyCredentialUserEntity person) {
        throw new UnsupportedOperationException("A passkey makes no people");
    }

    @Override
    public void delete(Bytes id) {
        throw new UnsupportedOperationException("A passkey removes no people");
    }

    static Bytes id(UUID id) {
        return new Bytes(ByteBuffer.allocate(UUID_BYTES)
                .putLong(id.getMostSignificantBits())
                .putLong(id.getLeastSignificantBits())
                .array());
    }

    static Optional<UUID> id(Bytes id) {
        ByteBuffer bytes = ByteBuffer.wrap(id.getBytes());
        return bytes.remaining() == UUID_BYTES
                ? Optional.of(new UUID(bytes.getLong(), bytes.getLong()))
                : Optional.empty();
    }

    private static PublicKeyCredentialUserEntity known(Person person) {
        return ImmutablePublicKeyCredentialUserEntity.builder()
                .id(id(person.id))
                .name(person.name)
                .displayName(person.name)
                .build();
    }
}
