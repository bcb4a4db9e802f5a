package patinary.shop;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.web.webauthn.api.AuthenticatorTransport;
import org.springframework.security.web.webauthn.api.Bytes;
import org.springframework.security.web.webauthn.api.CredentialRecord;
import org.springframework.security.web.webauthn.api.ImmutableCredentialRecord;
import org.springframework.security.web.webauthn.api.ImmutablePublicKeyCose;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialType;
import org.springframework.security.web.webauthn.management.UserCredentialRepository;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** The passkeys of all people: what a browser may sign with, and no secret. */
@Repository
@Transactional
class Passkeys implements UserCredentialRepository {

    /**
     * A passkey in its owner's list.
     *
     * @param mark its id, which the device that has it knows it by
     * @param place the name of the shop under which it works
     */
    record Row(
            String mark,
            String label,
            String place,
            Instant createdAt,
            @Nullable Instant lastUsedAt) {}

    private static final String KEY =
            "select credential_id, person_id, label, public_key, attestation_object, signature_count,"
                    + " uv_initialized, backup_eligible, backup_state, transports, created_at, last_used_at from passkey ";

    private final JdbcClient jdbc;

    Passkeys(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    public List<Row> of(String person) {
        return jdbc.sql(
                        "select k.credential_id as mark, k.label, k.place, k.created_at, k.last_used_at"
                                + " from passkey k join person p on p.id = k.person_id where p.name = ? order by k.created_at, mark")
                .param(person)
                .query(Row.class)
                .list();
    }

    /** Takes one of her own away. */
    public boolean remove(String person, String mark) {
        return jdbc.sql("delete from passkey where credential_id = ?"
                                + " and person_id = (select id from person where name = ?)")
                        .params(mark, person)
                        .update()
                == 1;
    }

    /** Takes all of a person's away, wherever they work. */
    public void removeAll(UUID person) {
        jdbc.sql("delete from passkey where person_id = ?").param(person).update();
    }

    public void bind(Bytes id, String place) {
        jdbc.sql("update passkey set place = ? where credential_id = ?")
                .params(place, id.toBase64UrlString())
                .update();
    }

    @Override
    public void delete(Bytes id) {
        jdbc.sql("delete from passkey where credential_id = ?")
                .param(id.toBase64UrlString())
                .update();
    }

    /** A new one, or one that was used: then how often, when, and whether it is kept elsewhere too. */
    @Override
    public void save(CredentialRecord key) {
        int changed = jdbc.sql(
                        "update passkey set signature_count = ?, backup_state = ?, uv_initialized = ?, last_used_at = ?"
                                + " where credential_id = ?")
                .params(
                        key.getSignatureCount(),
                        key.isBackupState(),
                        key.isUvInitialized(),
                        key.getLastUsed().atOffset(ZoneOffset.UTC),
                        key.getCredentialId().toBase64UrlString())
                .update();
        if (changed == 0) {
            insert(key);
        }
    }

    private void insert(CredentialRecord key) {
        UUID person = PasskeyPeople.id(key.getUserEntityUserId())
                .orElseThrow(() -> new IllegalArgumentException("A passkey of nobody"));
        jdbc.sql(
                        "insert into passkey (credential_id, person_id, label, place, public_key, attestation_object, signature_count,"
                                + " uv_initialized, backup_eligible, backup_state, transports, created_at)"
                                + " values (?, ?, ?, '', ?, ?, ?, ?, ?, ?, ?, ?)")
                .params(
                        key.getCredentialId().toBase64UrlString(),
                        person,
                        key.getLabel(),
                        key.getPublicKey().getBytes(),
                        Objects.requireNonNull(key.getAttestationObject()).getBytes(),
                        key.getSignatureCount(),
                        key.isUvInitialized(),
                        key.isBackupEligible(),
                        key.isBackupState(),
                        key.getTransports().stream()
                                .map(AuthenticatorTransport::getValue)
                                .sorted()
                                .collect(Collectors.joining(" ")),
                        key.getCreated().atOffset(ZoneOffset.UTC))
                .update();
    }

    @Override
    public @Nullable CredentialRecord findByCredentialId(Bytes id) {
        return jdbc.sql(KEY + "where credential_id = ?")
                .param(id.toBase64UrlString())
                .query(Passkeys::read)
                .optional()
                .orElse(null);
    }

    @Override
    public List<CredentialRecord> findByUserId(Bytes person) {
        return PasskeyPeople.id(person)
                .map(id -> jdbc.sql(KEY + "where person_id = ?")
                        .param(id)
                        .query(Passkeys::read)
                        .list())
                .orElse(List.of());
    }

    private static CredentialRecord read(ResultSet row, int number) throws SQLException {
        Instant created = row.getObject("created_at", OffsetDateTime.class).toInstant();
        OffsetDateTime used = row.getObject("last_used_at", OffsetDateTime.class);
        return ImmutableCredentialRecord.builder()
                .credentialType(PublicKeyCredentialType.PUBLIC_KEY)
                .credentialId(Bytes.fromBase64(row.getString("credential_id")))
                .userEntityUserId(PasskeyPeople.id(row.getObject("person_id", UUID.class)))
                .label(row.getString("label"))
                .publicKey(new ImmutablePublicKeyCose(row.getBytes("public_key")))
                .attestationObject(new Bytes(row.getBytes("attestation_object")))
                .signatureCount(row.getLong("signature_count"))
                .uvInitialized(row.getBoolean("uv_initialized"))
                .backupEligible(row.getBoolean("backup_eligible"))
                .backupState(row.getBoolean("backup_state"))
                .transports(transports(row.getString("transports")))
                .created(created)
                .lastUsed(used == null ? created : used.toInstant())
                .build();
    }

    private static Set<AuthenticatorTransport> transports(String words) {
        return Arrays.stream(words.split(" "))
                .filter(word -> !word.isEmpty())
                .map(AuthenticatorTransport::valueOf)
                .collect(Collectors.toSet());
    }
}
