package yardstick;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.LocalDate;

/** One row of the list: a jar of paint on a shelf, invented. */
@Entity
@Table(name = "jar")
public class Jar {

    @Id
    private long id;

    @Version
    private int version;

    private String name;
    private LocalDate bought;
    private BigDecimal price;

    protected Jar() {}

    public long getId() {
        return id;
    }

    public String getName() {
        return name;
    }

    public LocalDate getBought() {
        return bought;
    }

    public BigDecimal getPrice() {
        return price;
    }
}
